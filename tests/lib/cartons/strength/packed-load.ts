import type { CartonLoad } from "#lib/cartons/strength/load-limit";
import { parseSizes } from "#lib/units/length";
import { type Milligrams, parseMass } from "#lib/units/mass";

/** A mass as a scale gave it, stored to the milligram. */
export function massOf(text: string): Milligrams {
  const reading = parseMass(text);
  if (reading.kind !== "mass") throw new RangeError(`massOf requires a mass, got ${text}`);
  return reading.mg;
}

/** Three sizes as typed, stored to the micrometre. */
export function sidesOf(text: string): CartonLoad["outsideUm"] {
  const reading = parseSizes(text, "imperial");
  const [first, second, third] = reading.kind === "sizes" ? reading.um : [];
  if (!first || !second || !third) throw new RangeError(`sidesOf requires three sizes, got ${text}`);
  return [first, second, third];
}

/** A packed carton: "18 x 12 x 10 in" outside and "42 lb" gross. */
export function loadOf(sizes: string, gross: string): CartonLoad {
  return { grossMg: massOf(gross), outsideUm: sidesOf(sizes) };
}
