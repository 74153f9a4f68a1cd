import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { neededText, optionalText, sizesTyped, tick } from "../_parts/typed-fields";
import { bareMass } from "./card-fields";

/** An item type as typed: what it is called, what the bare piece weighs and measures. */
export function itemTypeForm(measures: Measures) {
  return z.object({
    name: neededText("Give it the name you call it by: mug pair, mantel clock."),
    mass: bareMass(measures),
    sizes: sizesTyped(measures).optional(),
    note: optionalText,
    retired: tick,
  });
}
