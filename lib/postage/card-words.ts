import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import type { RateBand, RateCard } from "#lib/postage/rate-card";
import type { FeeCondition, FeeGroup, RateFee } from "#lib/postage/rate-fee";
import { ratioText } from "#lib/postage/ratio";
import { roundingWords } from "#lib/postage/ratio-rounding";
import { measureWords, type TypedMeasure } from "#lib/postage/typed-measure";
import { formatDay } from "#lib/units/day-text";
import { minorDigitsOf } from "#lib/units/minor-digits";
import { formatMoney } from "#lib/units/money";

/**
 * What a band takes, in words.
 *
 * @param band of a card
 * @returns null for one without limits
 */
export function wallWords({ walls }: Pick<RateBand, "walls">): string | null {
  const { longest, lengthAndGirth, sides, weight } = walls;
  const limits: (string | null)[] = [
    sides === null ? null : `up to ${sidesWords(sides)}`,
    longest === null ? null : `longest side up to ${measureWords(longest)}`,
    lengthAndGirth === null ? null : `length and girth up to ${measureWords(lengthAndGirth)}`,
    weight === null ? null : `up to ${measureWords(weight)}`,
  ];
  const told = limits.filter((limit) => limit !== null);
  return told.length === 0 ? null : told.join(", ");
}

function sidesWords(sides: readonly TypedMeasure<string>[]): string {
  const [first] = sides;
  const isOneUnit = sides.every(({ unit }) => unit === first?.unit);
  return isOneUnit
    ? `${sides.map(({ text }) => text).join(" × ")} ${first?.unit ?? ""}`
    : sides.map(measureWords).join(" × ");
}

/**
 * How a card turns size into weight, in words.
 *
 * @param rule of a card whose zones are names; null: size does not count
 */
export function sizeRuleWords(rule: DimensionalRule | null): string {
  if (rule === null) return "Size adds no weight.";
  const { divisor, lengthUnit, massUnit, floor, sides, result, shapeFactor, atMost, zones } = rule;
  const over = floor === null ? "Size counts" : `Over ${ratioText(floor)} ${lengthUnit}³ size counts`;
  const where = zones === null ? "" : ` to ${zones.join(", ")}`;
  const parts = [
    `each side ${roundingWords(sides, lengthUnit)}`,
    `volume ÷ ${ratioText(divisor)} ${lengthUnit}³ for each ${massUnit}`,
    `that weight ${roundingWords(result, massUnit)}`,
    ...(shapeFactor === null ? [] : [`what is no box × ${ratioText(shapeFactor)}`]),
    ...(atMost === null ? [] : [`at most ${ratioText(atMost)} ${massUnit}`]),
  ];
  return `${over}${where}: ${parts.join(", ")}.`;
}

/**
 * A fee in words.
 *
 * @param fee of a card whose zones are names
 * @param currency ISO 4217 code
 */
export function feeWords(fee: RateFee, currency: string): string {
  const { name, validFrom, validTo, when, groups } = fee;
  const from = validFrom === null ? "" : ` from ${formatDay(validFrom, { year: true })}`;
  const to = validTo === null ? "" : ` to ${formatDay(validTo, { year: true })}`;
  const amounts = groups.map((group) => groupWords(group, currency)).join("; ");
  return `${name}: ${amounts}${conditionWords(when)}${from}${to}.`;
}

function groupWords({ zones, rows }: FeeGroup, currency: string): string {
  const money = (minor: number) => formatMoney(minor, currency, minorDigitsOf(currency));
  const where = zones === null ? "" : `${zones.join(", ")} `;
  const steps = rows.map(({ upTo, minor }) => {
    if (upTo !== null) return `up to ${measureWords(upTo)} ${money(minor)}`;
    return rows.length === 1 ? money(minor) : `heavier ${money(minor)}`;
  });
  return `${where}${steps.join(", ")}`;
}

function conditionWords(when: FeeCondition): string {
  switch (when.kind) {
    case "always":
      return "";
    case "volume":
      return `, for more than ${ratioText(when.over)} ${when.unit}³`;
    case "side": {
      const upTo = when.upTo === null ? "" : ` up to ${measureWords(when.upTo)}`;
      return `, where the ${when.which === "longest" ? "longest" : "second longest"} side is over ${measureWords(when.over)}${upTo}`;
    }
  }
}

/**
 * How a card rounds weights, in words.
 *
 * @param card any
 * @returns null where the next step decides
 */
export function roundingUpWords({ roundUpTo }: Pick<RateCard, "roundUpTo">): string | null {
  return roundUpTo === null ? null : `Weights go up to whole multiples of ${measureWords(roundUpTo)}.`;
}
