import type { Material } from "#lib/packing/material";

/** What a material does for a piece: keep its surface, take a shock, brace it, bind, fill, seal. */
export type WrapJob = "surface" | "shock" | "brace" | "bind" | "fill" | "seal";

/** Why a material may stand in, as a code; the words are the screen's. */
export type StandInReason =
  | "same-material"
  | "more-layers"
  | "fewer-layers"
  | "same-area"
  | "same-volume"
  | "same-length"
  | "one-for-one"
  | "snag-guard-only";

/** What to mind when it does. */
export type StandInCaution =
  | "prints-on-surfaces"
  | "dyes-may-run"
  | "scratches-bare-surfaces"
  | "mats-down"
  | "springs-back"
  | "no-shock-taken"
  | "not-on-bare-surface"
  | "heavier";

/**
 * A material that can stand in for another in a job. `ratio` is how much of it goes for one of the other: layers of
 * the same area, volume, length, or pieces one for one, as `measure` says.
 */
export type SubstitutionRule = {
  readonly job: WrapJob;
  readonly from: Material;
  readonly to: Material;
  readonly ratio: number;
  readonly measure: "area" | "volume" | "length" | "count";
  readonly reason: StandInReason;
  readonly cautions: readonly StandInCaution[];
  readonly source: string;
};
