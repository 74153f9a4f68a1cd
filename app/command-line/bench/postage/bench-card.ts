import type { RateCard } from "#lib/postage/rate-card";
import { ratio } from "#lib/postage/ratio";
import { NO_WALLS } from "#lib/postage/size-walls";
import { type LengthUnit, type MassUnit, type TypedMeasure, typedMeasure } from "#lib/postage/typed-measure";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";

const OUNCES = ["4", "8", "12", "15.999"];
const POUNDS = 70;
const ZONES = ["1", "2", "3", "4", "5", "6", "7", "8", "9"];

/** An invented card as large as real ones: ounces, then pounds, nine zones, size over a cubic foot, two length fees. */
export function benchCard(): RateCard {
  const limits = [
    ...OUNCES.map((text) => typed(text, "oz")),
    ...Array.from({ length: POUNDS }, (_, at) => typed(String(at + 1), "lb")),
  ];
  const steps = limits.map((upTo, at) => ({
    upTo,
    prices: ZONES.map((_, zone) => minorUnits(500 + 35 * at + 40 * zone + 9 * at * zone)),
  }));
  return {
    service: "Parcels",
    currency: "USD",
    validFrom: day("2026-01-01"),
    validTo: null,
    zones: ZONES,
    bands: [{ name: "", walls: NO_WALLS, countsSize: true, steps, beyond: { kind: "notCarried" } }],
    roundUpTo: null,
    dimensional: {
      divisor: ratio(139n),
      lengthUnit: "in",
      massUnit: "lb",
      floor: ratio(1728n),
      sides: { kind: "up", to: ratio(1n) },
      result: { kind: "up", to: ratio(1n) },
      shapeFactor: null,
      atMost: null,
      zones: null,
    },
    fees: [
      lengthFee("Long", typed("22", "in"), typed("30", "in"), 400),
      lengthFee("Very long", typed("30", "in"), null, 1800),
    ],
  };
}

function lengthFee(
  name: string,
  over: TypedMeasure<LengthUnit>,
  upTo: TypedMeasure<LengthUnit> | null,
  minor: number,
): RateCard["fees"][number] {
  return {
    name,
    validFrom: null,
    validTo: null,
    when: { kind: "side", which: "longest", over, upTo },
    groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(minor) }] }],
  };
}

function typed<Unit extends MassUnit | LengthUnit>(text: string, unit: Unit): TypedMeasure<Unit> {
  const measure = typedMeasure(text, unit, "imperial");
  if (measure === null) throw new RangeError(`benchCard requires a number, got ${text}`);
  return measure;
}
