import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { moneyTyped, neededText, optionalText, sizesTyped, tick } from "../_parts/typed-fields";
import { bareMass } from "./card-fields";

/** An item type as typed: what it is called, what the bare piece weighs and measures, and what one sells for. */
export function itemTypeForm(measures: Measures, minorDigits: number) {
  return z.object({
    name: neededText("Give it the name you call it by: mug pair, mantel clock."),
    mass: bareMass(measures),
    sizes: sizesTyped(measures).optional(),
    value: moneyTyped(minorDigits).optional(),
    note: optionalText,
    retired: tick,
  });
}
