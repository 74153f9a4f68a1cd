import type { CartonRoom } from "#lib/packing/fill/carton-room";
import type { SupplyJob } from "#lib/packing/recipe/chosen-supplies";
import type { SmallestDraft, TightCarton } from "#lib/packing/recipe/smallest-draft";
import {
  bareLengthUnit,
  formatLength,
  formatSizes,
  MICROMETRES_PER_INCH,
  micrometres,
} from "#lib/units/length";
import type { Measures } from "#lib/units/measures";

/** Tight cartons that are offered beside a draft. */
const MOST_OFFERED = 3;

type NameOf = (supplyId: string) => string;

const JOB_WORDS: Readonly<Record<SupplyJob, string>> = {
  hollow: "filling the hollow",
  guard: "guarding what sticks out",
  surface: "the layer next to the surface",
  cushion: "the cushion round the piece",
  outer: "the outer wrap",
  bind: "holding the wraps",
  divide: "dividing the set",
  fill: "filling the carton",
  seal: "closing the carton",
};
const TOO_SMALL: Readonly<Record<CartonRoom["tightest"], string>> = {
  length: "too short",
  width: "too narrow",
  height: "too low",
};
/** A cushion is said, and accepted, no finer than this. */
const STEP_UM: Readonly<Record<Measures, number>> = { imperial: MICROMETRES_PER_INCH / 100, metric: 1_000 };

/**
 * The cushion that a carton leaves, rounded down so that it can be asked for.
 *
 * @param leavesUm micrometres, zero or more
 * @param measures the shop's measures
 * @returns as it is typed: "1.28 in"
 */
export function leftCushion(leavesUm: number, measures: Measures): string {
  const step = STEP_UM[measures];
  return formatLength(micrometres(Math.round(Math.floor(leavesUm / step) * step)), measures);
}

/**
 * Why a carton will not do.
 *
 * @example tightWords({ cartonId, room }, nameOf, "imperial") // "Carton 8 × 8 × 8 leaves 1.28 in of 2 in."
 */
export function tightWords({ cartonId, room }: TightCarton, nameOf: NameOf, measures: Measures): string {
  if (room.kind === "does-not-fit") {
    const missing = formatLength(micrometres(Math.ceil(-2 * room.leavesUm)), measures);
    return `${nameOf(cartonId)} is ${missing} ${TOO_SMALL[room.tightest]} for the wrapped piece.`;
  }
  const asked = formatLength(micrometres(Math.round(room.askedUm)), measures);
  return `${nameOf(cartonId)} leaves ${leftCushion(room.leavesUm, measures)} of the ${asked} asked for.`;
}

/**
 * The tight cartons that a seller may accept for one card: those that leave half of the cushion asked for or more, the
 * smallest first; where none does, the one that leaves most.
 *
 * @param tight cartons that were tried, the smallest first
 * @returns three at most; none where no carton leaves anything
 */
export function acceptable(tight: readonly TightCarton[]): readonly TightCarton[] {
  const left = tight.filter(({ room }) => room.kind === "too-tight" && room.leavesUm > 0);
  const half = left.filter(({ room }) => room.leavesUm >= room.askedUm / 2);
  if (half.length > 0) return half.slice(0, MOST_OFFERED);
  return left.toSorted((a, b) => b.room.leavesUm - a.room.leavesUm).slice(0, 1);
}

/**
 * Why there is no draft, with the way out.
 *
 * @param draft what came of it
 * @param nameOf the name of a supply
 * @param measures the shop's measures
 * @returns a sentence; empty for a draft
 */
export function refusalWords(draft: SmallestDraft, nameOf: NameOf, measures: Measures): string {
  switch (draft.kind) {
    case "drafted":
      return "";
    case "no-carton":
      return draft.tight.length === 0
        ? "No carton in use has its sizes written down: add them under Supplies."
        : "No carton in use leaves the cushion that is asked for: take a larger one, or accept less for this card.";
    case "no-outer":
      return noOuterWords(draft, nameOf, measures);
    case "unsuited-supply":
      return `${nameOf(draft.supplyId)} was taken for ${JOB_WORDS[draft.job]}, but its sizes or its use unit do not say enough: complete it under Supplies.`;
    case "piece-problems":
      return `The description does not add up: ${draft.problems.map(({ words }) => words).join(" ")}`;
    default:
      return draft satisfies never;
  }
}

/** The inside that would do is rounded up to a half inch or half a centimetre: cartons come no finer. */
const CARTON_STEP_UM: Readonly<Record<Measures, number>> = {
  imperial: MICROMETRES_PER_INCH / 2,
  metric: 5_000,
};

function noOuterWords(
  { carton, least, gapUm }: Extract<SmallestDraft, { readonly kind: "no-outer" }>,
  nameOf: NameOf,
  measures: Measures,
): string {
  const step = CARTON_STEP_UM[measures];
  const sides = [least.lengthUm, least.widthUm, least.heightUm].map((um) =>
    micrometres(Math.ceil(um / step) * step),
  );
  const gap = formatLength(micrometres(Math.round(gapUm)), measures);
  const size = `${formatSizes(sides, measures)} ${bareLengthUnit(measures)}`;
  return `No carton in use goes round ${nameOf(carton.supplyId)} with ${gap} all round. One of ${size} inside or more would do: add it under Supplies, or draft with one carton.`;
}

/**
 * What a draft is packed in, with the room that it leaves.
 *
 * @param draft the draft
 * @param nameOf the name of a supply
 * @param measures the shop's measures
 * @returns "In Carton 12 × 9 × 8, which leaves 2.36 in on its tightest side; 2 in is asked for."
 */
export function cartonWords(
  { recipe, carton, outer }: Extract<SmallestDraft, { readonly kind: "drafted" }>,
  nameOf: NameOf,
  measures: Measures,
): string {
  const leaves = ({ leavesUm, askedUm }: CartonRoom): string =>
    `${leftCushion(leavesUm, measures)} on its tightest side; ${formatLength(micrometres(Math.round(askedUm)), measures)} is asked for`;
  const inner = `In ${nameOf(carton.supplyId)}, which leaves ${leaves(recipe.room)}.`;
  if (outer === null) return inner;
  return `${inner} Round it ${nameOf(outer.carton.supplyId)}, with a gap of ${leaves(outer.room)}.`;
}

/**
 * What the piece asks for and nothing on the shelf does.
 *
 * @param jobs jobs without a supply
 * @returns a sentence; null where nothing is left out
 */
export function leftOutWords(jobs: readonly SupplyJob[]): string | null {
  if (jobs.length === 0) return null;
  return `Nothing on the shelf for ${jobs.map((job) => JOB_WORDS[job]).join(", ")}: left out.`;
}
