import type { WrapNeed } from "#lib/packing/wrap/wrap-need";
import { type Amount, amountFraction } from "#lib/units/amount";

/** What a wrap takes in sheets: so many whole or part sheets, one of `denominator` parts each. */
type SheetParts = { readonly count: number; readonly denominator: number; readonly amount: Amount };

/** The parts that a sheet is torn into: whole, half, third, quarter. */
const SHEET_PARTS: readonly number[] = [1, 2, 3, 4];

/**
 * The fewest sheets that wrap something, in whole or part sheets of one size. A half or third is torn across the long
 * side, a quarter across both. Parts are laid end to end with the overlap, and side by side where the wrap is wider;
 * of all parts, either way round, the one that takes least paper is taken (the larger part where two are equal).
 *
 * @param need - the strip in theory
 * @param sheet - sides in micrometres, above zero
 * @param parts - the parts that may be torn, as denominators
 * @returns parts and the amount of sheets, never less than the strip
 * @throws RangeError if a length is not above zero, or no part is longer than the overlap
 * @see common practice, no source: paper is torn in halves, thirds and quarters
 * @example sheetParts(mugOnce, { lengthUm: 762000, widthUm: 508000 }) // a third of a sheet of tissue
 */
export function sheetParts(
  need: WrapNeed,
  sheet: { readonly lengthUm: number; readonly widthUm: number },
  parts: readonly number[] = SHEET_PARTS,
): SheetParts {
  const lengths = [need.lengthUm, need.widthUm, sheet.lengthUm, sheet.widthUm];
  const wrong = lengths.find((each) => !(each > 0 && Number.isFinite(each)));
  if (wrong !== undefined) throw new RangeError(`sheetParts requires lengths above zero, got ${wrong}`);
  const choices = parts.flatMap((denominator) => {
    const [long, short] = partSides(sheet, denominator);
    return [partsNeeded(need, long, short), partsNeeded(need, short, long)].map((count) => ({
      count,
      denominator,
    }));
  });
  const least = choices.reduce((best, choice) =>
    choice.count * best.denominator < best.count * choice.denominator ? choice : best,
  );
  if (!Number.isFinite(least.count)) {
    throw new RangeError(`sheetParts requires a sheet longer than the overlap, got ${need.overlapUm}`);
  }
  return { ...least, amount: amountFraction(least.count, least.denominator) };
}

function partSides(
  sheet: { readonly lengthUm: number; readonly widthUm: number },
  denominator: number,
): readonly [number, number] {
  const long = Math.max(sheet.lengthUm, sheet.widthUm);
  const short = Math.min(sheet.lengthUm, sheet.widthUm);
  return denominator === 4 ? [long / 2, short / 2] : [long / denominator, short];
}

function partsNeeded(need: WrapNeed, alongUm: number, acrossUm: number): number {
  const widths = Math.ceil(need.widthUm / acrossUm);
  if (need.lengthUm <= alongUm) return widths;
  if (alongUm <= need.overlapUm) return Number.POSITIVE_INFINITY;
  return widths * Math.ceil((need.lengthUm - need.overlapUm) / (alongUm - need.overlapUm));
}
