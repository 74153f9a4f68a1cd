import { type ExactMass, massAsStored } from "#lib/postage/exact-mass";
import { type ParcelSize, parcelSize } from "#lib/postage/parcel-size";
import type { RateBand, RateCard, WeightStep } from "#lib/postage/rate-card";
import { NO_WALLS } from "#lib/postage/size-walls";
import { type LengthUnit, type MassUnit, type TypedMeasure, typedMeasure } from "#lib/postage/typed-measure";
import { day } from "#lib/units/day";
import { parseSizes } from "#lib/units/length";
import { parseMass } from "#lib/units/mass";
import { minorUnits } from "#lib/units/money";
import { numberFromText, type Ratio } from "#lib/units/number-text";

/** An exact number from its text. */
export function exact(text: string): Ratio {
  const value = numberFromText(text, "imperial");
  if (value === null) throw new RangeError(`exact requires a number, got ${text}`);
  return value;
}

/** A measure from "15.999 oz" or "45 cm". */
export function typed<Unit extends MassUnit | LengthUnit>(text: string, unit: Unit): TypedMeasure<Unit> {
  const measure = typedMeasure(text, unit, "imperial");
  if (measure === null) throw new RangeError(`typed requires a number, got ${text}`);
  return measure;
}

/** A packed weight as a scale gave it, stored to the milligram. */
export function weighed(text: string): ExactMass {
  const reading = parseMass(text);
  if (reading.kind !== "mass") throw new RangeError(`weighed requires a mass, got ${text}`);
  return massAsStored(reading.mg, { typed: text });
}

/** Outside sizes as typed, stored to the micrometre. */
export function sized(text: string, shape: ParcelSize["shape"] = "box"): ParcelSize {
  const reading = parseSizes(text, "imperial");
  if (reading.kind !== "sizes") throw new RangeError(`sized requires sizes, got ${text}`);
  return parcelSize(reading.um, text, shape);
}

/** A step with its prices in the order of the zones. */
export function stepUpTo(text: string, unit: MassUnit, prices: readonly number[]): WeightStep {
  return { upTo: typed(text, unit), prices: prices.map(minorUnits) };
}

/** A band without a name, walls or further units. */
export function plainBand(steps: readonly WeightStep[], change: Partial<RateBand> = {}): RateBand {
  return { name: "", walls: NO_WALLS, countsSize: true, steps, beyond: { kind: "notCarried" }, ...change };
}

/** An invented card of one zone: 1, 2 and 5 kg for 4.00, 6.50 and 11.00. */
export function plainCard(change: Partial<RateCard> = {}): RateCard {
  return {
    service: "tracked",
    currency: "EUR",
    validFrom: day("2026-01-01"),
    validTo: null,
    zones: ["home"],
    bands: [plainBand([stepUpTo("1", "kg", [400]), stepUpTo("2", "kg", [650]), stepUpTo("5", "kg", [1100])])],
    roundUpTo: null,
    dimensional: null,
    fees: [],
    ...change,
  };
}
