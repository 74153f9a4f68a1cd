import type { Material } from "#lib/packing/material";
import type { UseUnit } from "#lib/units/use-unit";

/** A supply that a new shop may start with. Masses are guesses until the seller weighs ten of them. */
export type StarterSupply = {
  readonly id: string;
  readonly name: string;
  readonly kind: "tissue" | "paper" | "bubble" | "tape" | "carton";
  /** What it is made of; left out for a carton. Its layer is the usual one until the shop has measured its own. */
  readonly material?: Material;
  readonly unit: UseUnit;
  /** Mass of one use unit, milligrams. */
  readonly massMg: number;
  /** Length, width and height in inches, as many as the supply has. */
  readonly inches: readonly number[];
  /** How a seller counts it where that is not by the use unit. */
  readonly counted?: { readonly word: string; readonly units: number };
  /** A wound roll: diameters of core and full roll in inches, and use units on a full roll. */
  readonly roll?: { readonly coreInches: number; readonly fullInches: number; readonly fullUnits: number };
  /** Height of one sheet in a pressed pile, nanometres. */
  readonly sheetNm?: number;
  readonly note: string;
};
