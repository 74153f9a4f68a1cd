/** How far a measured value may be from the usual one before it looks like a wrong unit or a miscount. */
type UsualSpan = { readonly least: number; readonly most: number };

/**
 * A value that a shop has measured: what it is, what it replaces, and how many times the usual it is. `doubtful` where
 * that is outside what is likely: show the ratio and ask for the unit before it is taken over.
 */
export type Calibration = {
  readonly kind: "plausible" | "doubtful";
  readonly value: number;
  readonly replaces: number;
  readonly ratio: number;
  readonly span: UsualSpan;
};

/**
 * Judges a measured value by the one that it replaces.
 *
 * @param value - measured, above zero
 * @param replaces - the value in use so far, in the same unit, above zero
 * @param span - least and most times of it that are likely
 * @returns the calibration
 * @throws RangeError if a value is not above zero, or the span does not hold 1
 * @see the spans are common practice, no source
 * @example calibration(9172, 1529, { least: 0.4, most: 2.5 }) // doubtful: 6 times the usual
 */
export function calibration(value: number, replaces: number, span: UsualSpan): Calibration {
  if (!(value > 0 && replaces > 0 && Number.isFinite(value) && Number.isFinite(replaces))) {
    throw new RangeError(`calibration requires values above zero, got ${value} and ${replaces}`);
  }
  if (!(span.least > 0 && span.least <= 1 && span.most >= 1)) {
    throw new RangeError(`calibration requires a span around 1, got ${span.least} to ${span.most}`);
  }
  const ratio = value / replaces;
  const likely = ratio >= span.least && ratio <= span.most;
  return { kind: likely ? "plausible" : "doubtful", value, replaces, ratio, span };
}
