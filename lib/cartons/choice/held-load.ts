import type { FitBook } from "#lib/cartons/choice/fit-book";
import type { LeftOutCarton, LeftOutReason } from "#lib/cartons/choice/left-out";
import type { PricedCarton } from "#lib/cartons/choice/priced-carton";
import type { CartonCost } from "#lib/cartons/cost/carton-cost";
import type { Placement } from "#lib/cartons/fit/placement";
import type { CartonRating } from "#lib/cartons/strength/carton-rating";
import type { LoadLimit } from "#lib/cartons/strength/load-limit";
import { type OuterUse, outerCarton } from "#lib/cartons/strength/outer-carton";
import { milligrams } from "#lib/units/mass";

/** Limits that a load is within, the tightest in front, and how far the board is trusted. */
export type CarriedLoad = {
  readonly limits: readonly LoadLimit[];
  readonly trustedPercent: number;
  readonly isGuess: boolean;
};

/** A priced carton that the load fits and that may be sent with it. */
export type HeldLoad = PricedCarton & { readonly placement: Placement; readonly strength: CarriedLoad };

/** What cartons are asked for one load. */
export type HoldingQuestion = { readonly fitIn: FitBook; readonly use: Omit<OuterUse, "condition"> };

/** The first carton that holds a load, and why those before it do not. */
export type FirstHeld = { readonly held: HeldLoad | null; readonly before: readonly LeftOutCarton[] };

type NotCarried = Extract<LeftOutReason, { readonly kind: "innerOnly" | "over" }>;

/**
 * Whether a carton may be sent with a load of a known cost in it: mass and outside are those of the cost.
 *
 * @param board rating and condition
 * @param cost of the load in the carton
 * @param use type of the load and trust in the board
 * @returns the limits that it is within, or why it may not be sent
 * @throws RangeError as `outerCarton`
 */
export function carriedLoad(
  board: { readonly rating: CartonRating; readonly condition: OuterUse["condition"] },
  cost: CartonCost,
  use: HoldingQuestion["use"],
): { readonly kind: "carries"; readonly strength: CarriedLoad } | NotCarried {
  const load = { grossMg: milligrams(Math.round(cost.massMg)), outsideUm: cost.size.um };
  const verdict = outerCarton(board.rating, load, { ...use, condition: board.condition });
  if (verdict.kind === "innerOnly") return verdict;
  const { kind, limits, trustedPercent, isGuess } = verdict;
  if (kind === "carries") return { kind, strength: { limits, trustedPercent, isGuess } };
  const [limit] = limits;
  if (limit === undefined) throw new Error("carriedLoad found a carton over its limits without a limit");
  return { kind: "over", limit };
}

/**
 * Goes through cartons in their order until one holds the load. Once one is found, those before it whose fit was not proven
 * are asked again, as what was found may hold in them.
 *
 * @param priced cartons, best first
 * @param question fits of the load, and how it would be sent
 * @returns the first that holds the load, and those before it with their reasons
 * @throws RangeError as `cartonFit` and `outerCarton`
 */
export function firstHeld(priced: readonly PricedCarton[], question: HoldingQuestion): FirstHeld {
  const first = passed(priced, question);
  const mayHaveMissed = first.before.some(({ reason }) => reason.kind === "notProven");
  return first.held !== null && mayHaveMissed ? passed(priced, question) : first;
}

function passed(priced: readonly PricedCarton[], question: HoldingQuestion): FirstHeld {
  const before: LeftOutCarton[] = [];
  for (const each of priced) {
    const found = holding(each, question);
    if (found.kind === "holds") return { held: found.held, before };
    before.push({ cartonId: each.carton.id, reason: found });
  }
  return { held: null, before };
}

function holding(
  priced: PricedCarton,
  { fitIn, use }: HoldingQuestion,
): { readonly kind: "holds"; readonly held: HeldLoad } | LeftOutReason {
  const fit = fitIn(priced.carton.inside);
  if (fit.kind === "does-not-fit") return { kind: "doesNotFit", reason: fit.reason };
  if (fit.kind === "not-proven") return { kind: "notProven", tried: fit.tried };
  const carried = carriedLoad(priced.carton, priced.cost, use);
  if (carried.kind !== "carries") return carried;
  return { kind: "holds", held: { ...priced, placement: fit.placement, strength: carried.strength } };
}
