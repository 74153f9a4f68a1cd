import type { DraftSupply } from "#lib/packing/draft-supply";
import type { Material } from "#lib/packing/material";
import type { CushionStyle } from "#lib/packing/recipe-version";

/** What a supply does in a recipe. */
export type SupplyJob =
  | "hollow"
  | "guard"
  | "surface"
  | "cushion"
  | "outer"
  | "bind"
  | "divide"
  | "fill"
  | "seal";

/** The supply for each job; null where a job is left out. */
export type ChosenSupplies = Readonly<Record<SupplyJob, DraftSupply | null>>;

const PAPERS: readonly Material[] = ["packing-paper", "gift-wrap", "kraft"];
const FILMS: readonly Material[] = ["small-bubble", "large-bubble", "foam"];
const SOFT: readonly Material[] = ["tissue", ...PAPERS];

/** The same in every style; an outer wrap is taken only where there is heavy paper for it. */
const ALWAYS = {
  surface: ["tissue"],
  outer: ["kraft"],
  bind: ["household-tape", "stretch-film", "rubber-band"],
  divide: ["card"],
  seal: ["carton-tape", "paper-tape"],
} as const satisfies Partial<Record<SupplyJob, readonly Material[]>>;

/** Materials for each job, best first: common practice, no source. */
const MATERIALS: Readonly<Record<CushionStyle, Readonly<Record<SupplyJob, readonly Material[]>>>> = {
  paper: { ...ALWAYS, outer: [], hollow: SOFT, guard: PAPERS, cushion: PAPERS, fill: PAPERS },
  bubble: {
    ...ALWAYS,
    hollow: [...SOFT, ...FILMS],
    guard: FILMS,
    cushion: FILMS,
    fill: ["large-bubble", "small-bubble", "loose-fill"],
  },
  mixed: { ...ALWAYS, hollow: SOFT, guard: FILMS, cushion: FILMS, fill: [...PAPERS, "loose-fill"] },
};

/**
 * The supplies that a shop would take for a style, from those it has: for each job the first of the style's materials
 * that is there, the earlier in the list where a shop has two.
 *
 * @param style - paper, bubble or mixed
 * @param shelf - supplies of the shop, in its order
 * @returns a supply for each job, null where the shop has none for it
 * @see common practice, no source
 * @example chosenSupplies("mixed", [tissue, paper, smallBubble]).fill // paper
 */
export function chosenSupplies(style: CushionStyle, shelf: readonly DraftSupply[]): ChosenSupplies {
  const first = (job: SupplyJob): DraftSupply | null => {
    const found = MATERIALS[style][job].map((material) => shelf.find((each) => each.material === material));
    return found.find((each) => each !== undefined) ?? null;
  };
  return {
    hollow: first("hollow"),
    guard: first("guard"),
    surface: first("surface"),
    cushion: first("cushion"),
    outer: first("outer"),
    bind: first("bind"),
    divide: first("divide"),
    fill: first("fill"),
    seal: first("seal"),
  };
}
