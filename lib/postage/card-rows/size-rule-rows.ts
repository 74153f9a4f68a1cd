import type { RowReader } from "#lib/postage/card-rows/card-row";
import { exactNumber } from "#lib/postage/card-rows/exact-number";
import type { SaidPart } from "#lib/postage/card-rows/grouped-rows";
import { roundingFromText, roundingText } from "#lib/postage/card-rows/rounding-text";
import { saidNumber, saidValue } from "#lib/postage/card-rows/said-values";
import { zoneMarks, zonesFromMarks } from "#lib/postage/card-rows/zone-marks";
import type { DimensionalRule } from "#lib/postage/dimensional-weight";
import { lengthUnitOf, massUnitOf } from "#lib/postage/measure-from-text";
import type { Rounding } from "#lib/postage/ratio-rounding";
import type { LengthUnit, MassUnit } from "#lib/postage/typed-measure";
import type { Measures } from "#lib/units/measures";
import { numberFromText, type Ratio } from "#lib/units/number-text";

/**
 * How a card turns size into weight, as rows.
 *
 * @param rule of the card
 * @param zones over the columns
 */
export function sizeRuleRows(rule: DimensionalRule, zones: readonly string[]): string[][] {
  const { lengthUnit, massUnit } = rule;
  const rows = [
    ["size", "divisor", divisorText(rule)],
    ["size", "each side", roundingText(rule.sides, lengthUnit)],
    ["size", "weight", roundingText(rule.result, massUnit)],
  ];
  if (rule.floor !== null) rows.push(["size", "more than", `${exactNumber(rule.floor)} ${lengthUnit}³`]);
  if (rule.shapeFactor !== null) rows.push(["size", "no box", exactNumber(rule.shapeFactor)]);
  if (rule.atMost !== null) rows.push(["size", "at most", `${exactNumber(rule.atMost)} ${massUnit}`]);
  if (rule.zones !== null) rows.push(["size", "zones", "", ...zoneMarks(rule.zones, zones)]);
  return rows;
}

/** A divisor with its pair of units: "139 in³ per lb". */
export function divisorText({
  divisor,
  lengthUnit,
  massUnit,
}: Pick<DimensionalRule, "divisor" | "lengthUnit" | "massUnit">): string {
  return `${exactNumber(divisor)} ${lengthUnit}³ per ${massUnit}`;
}

type Divisor = Pick<DimensionalRule, "divisor" | "lengthUnit" | "massUnit">;

/**
 * Reads a divisor.
 *
 * @param text "139 in³ per lb", "5000 cm3/kg"
 * @param measures whose decimal comma
 * @returns null if it can't be read, or is not above zero
 */
export function divisorFromText(text: string, measures: Measures): Divisor | null {
  const match =
    /^(.+?)\s*(?:(?:cubic|cu\.?)\s+)?(in|inch|inches|cm|mm)(?:³|\^?3)?\s*(?:per|\/)\s*([a-z]+)$/i.exec(
      text.trim(),
    );
  const divisor = match === null ? null : numberFromText(match[1] ?? "", measures);
  const [lengthUnit, massUnit] = [lengthUnitOf(match?.[2] ?? ""), massUnitOf(match?.[3] ?? "")];
  if (divisor === null || divisor.numerator <= 0n || lengthUnit === null || massUnit === null) return null;
  return { divisor, lengthUnit, massUnit };
}

/**
 * Reads how a card turns size into weight.
 *
 * @param part rows of the rule
 * @param reader measures and zones
 * @returns null where the card has no such rule, or it can't be read
 */
export function sizeRuleFromRows(part: SaidPart, reader: RowReader): DimensionalRule | null {
  const [first] = part.said.values();
  if (first === undefined) return null;
  if ((part.said.get("divisor")?.value ?? "") === "") {
    return reader.refuse(first.line, "a rule for size needs its divisor: size, divisor, 139 in³ per lb.");
  }
  const divisor = saidValue(
    part,
    "divisor",
    (text) => divisorFromText(text, reader.measures),
    "a number above zero with its units, such as 139 in³ per lb or 5000 cm³ per kg",
    reader,
  );
  if (divisor === null) return null;
  const { lengthUnit, massUnit } = divisor;
  return {
    ...divisor,
    floor: floorFrom(part, lengthUnit, reader),
    sides: roundingFrom(part, "each side", lengthUnit, reader),
    result: roundingFrom(part, "weight", massUnit, reader),
    shapeFactor: saidNumber(part, "no box", "", reader),
    atMost: saidNumber(part, "at most", massUnit, reader),
    zones: zonesFromMarks(part, reader),
  };
}

/**
 * Reads a volume.
 *
 * @param text "1728 in³", "1728 cu in"
 * @param lengthUnit that it must be the cube of
 * @param measures whose decimal comma
 */
export function volumeFromText(text: string, lengthUnit: LengthUnit, measures: Measures): Ratio | null {
  const match = /^(.+?)\s*(?:(?:cubic|cu\.?)\s+)?(in|inch|inches|cm|mm)(?:³|\^?3)?$/i.exec(text.trim());
  if (match === null || lengthUnitOf(match[2] ?? "") !== lengthUnit) return null;
  return numberFromText(match[1] ?? "", measures);
}

function floorFrom(part: SaidPart, lengthUnit: LengthUnit, reader: RowReader): Ratio | null {
  const read = (text: string) => volumeFromText(text, lengthUnit, reader.measures);
  return saidValue(part, "more than", read, `a volume like 1728 ${lengthUnit}³`, reader);
}

function roundingFrom(
  part: SaidPart,
  what: string,
  unit: LengthUnit | MassUnit,
  reader: RowReader,
): Rounding {
  const read = (text: string) => roundingFromText(text, unit, reader.measures);
  const expected = `up to 1 ${unit}, nearest 1 ${unit}, down to 1 ${unit} or as it is`;
  return saidValue(part, what, read, expected, reader) ?? { kind: "none" };
}
