/** Packing paper, 24 × 36 in, packed firm: cubic inches that a sheet fills. Common practice, no source. */
const CUBIC_INCHES_PER_SHEET = 52;

/** Large bubble as fill: cubic inches that a square foot fills. Common practice, no source. */
const CUBIC_INCHES_PER_SQUARE_FOOT = 65;

/** Share of the fill that goes under the piece. Common practice, no source. */
const BASE_SHARE = 0.3;

/**
 * Splits the fill of a carton into what goes under the piece and what goes round and over it.
 *
 * @param voidCubicInches - space left round the wrapped piece, cubic inches
 * @param style - paper fills with packing paper in whole sheets, bubble with large bubble in hundredths of a square foot
 * @returns the two amounts as text, in the use unit of the fill
 *
 * Source: common practice, no source; the test holds the sums against the worked table.
 * @example fillShares(372, "paper"); // { base: "2", rest: "5" }
 */
export function fillShares(
  voidCubicInches: number,
  style: "paper" | "bubble",
): { base: string; rest: string } {
  if (style === "paper") {
    const sheets = Math.round(voidCubicInches / CUBIC_INCHES_PER_SHEET);
    const base = Math.round(sheets * BASE_SHARE);
    return { base: String(base), rest: String(sheets - base) };
  }
  const hundredths = Math.round((voidCubicInches * 100) / CUBIC_INCHES_PER_SQUARE_FOOT);
  const base = Math.round((hundredths * BASE_SHARE) / 50) * 50;
  return { base: String(base / 100), rest: String((hundredths - base) / 100) };
}
