import type { StandIn } from "#lib/packing/substitution/stand-ins";
import type { StandInCaution, StandInReason } from "#lib/packing/substitution/substitution-rule";
import { MILLIGRAMS_PER_GRAM } from "#lib/units/mass";

const REASONS: Readonly<Record<StandInReason, string>> = {
  "same-material": "the same in another size",
  "more-layers": "more layers",
  "fewer-layers": "fewer layers",
  "same-area": "as much area",
  "same-volume": "fills as much",
  "same-length": "as long",
  "one-for-one": "one for one",
  "snag-guard-only": "guards against snags only",
};

const CAUTIONS: Readonly<Record<StandInCaution, string>> = {
  "prints-on-surfaces": "can print: tissue between",
  "dyes-may-run": "dyes may run: tissue between",
  "scratches-bare-surfaces": "scratches bare surfaces",
  "mats-down": "mats down on long trips",
  "springs-back": "springs back: the carton may bulge",
  "no-shock-taken": "takes no shock",
  "not-on-bare-surface": "never on glaze, gilt or paint",
  heavier: "heavier",
};

/** Less than this is no news on a kitchen scale. */
const LEAST_GRAMS = 5;

/**
 * Why something may stand in and what to mind, in a few words.
 *
 * @param standIn what stands in
 * @returns words between semicolons
 */
export function standInWords({ reason, cautions, addedMg }: StandIn): string {
  const added = addedMg === null ? "" : addedMassWords(addedMg);
  const others = cautions.filter((caution) => caution !== "heavier" || added === "");
  return [REASONS[reason], added, ...others.map((caution) => CAUTIONS[caution])]
    .filter((words) => words !== "")
    .join("; ");
}

/**
 * How much heavier or lighter the parcel gets.
 *
 * @param mg milligrams, below zero if lighter
 * @returns words; empty where it is next to nothing
 * @example addedMassWords(60_000) // "60 g heavier"
 */
export function addedMassWords(mg: number): string {
  const grams = Math.round(mg / MILLIGRAMS_PER_GRAM);
  if (Math.abs(grams) < LEAST_GRAMS) return "";
  return `${Math.abs(grams)} g ${grams > 0 ? "heavier" : "lighter"}`;
}
