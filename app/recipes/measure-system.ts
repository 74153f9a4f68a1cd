import { measureParts } from "#lib/units/measure-text";
import type { Measures } from "#lib/units/measures";

const METRIC_WORD = /^(?:mm|cm|m|milli\w+|centi\w+|met(?:re|er)s?)$/;

/**
 * The system of measures that a typed length is in.
 *
 * @param text a length as typed, or several sizes with crosses between
 * @param measures the shop's measures, which a number without a unit is in
 * @returns the system, or "mixed" where one text has units of both
 * @example measureSystem("10 cm 4 in", "imperial") // "mixed"
 */
export function measureSystem(text: string, measures: Measures): Measures | "mixed" {
  const units = text
    .split(/[x×*]|\bby\b/i)
    .flatMap((part) => measureParts(part, measures) ?? [])
    .map(({ unit }) => unit)
    .filter((unit) => unit !== "");
  const metric = units.filter((unit) => METRIC_WORD.test(unit)).length;
  if (units.length === 0) return measures;
  if (metric === units.length) return "metric";
  return metric === 0 ? "imperial" : "mixed";
}
