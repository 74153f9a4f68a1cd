import { assignmentBound, type BoundedRange } from "#lib/cartons/range/assignment-bound";
import { dominatedSizes } from "#lib/cartons/range/dominated-sizes";
import { interchangedRange } from "#lib/cartons/range/interchanged-range";
import { rangeCost } from "#lib/cartons/range/range-cost";
import { rangeModel, VALUE_PER_MINOR } from "#lib/cartons/range/range-model";
import { type RangeSpace, rangeSpace, spaceValue } from "#lib/cartons/range/range-space";
import { checkedTable, type RangeTable } from "#lib/cartons/range/range-table";
import { triedRange } from "#lib/cartons/range/tried-range";
import { modelText } from "#lib/optimisation/model-text";
import type { Solve } from "#lib/optimisation/solve";

/** What it takes to look for a range. */
export type RangeMeans = {
  readonly solve: Solve;
  /** time for the whole answer in seconds; from 0, where only the first range is given */
  readonly seconds: number;
  /** a clock in seconds from any moment */
  readonly now: () => number;
};

/** What became of the solver. */
export type SolverPart =
  | { readonly kind: "not-needed" }
  | { readonly kind: "no-time" }
  | { readonly kind: "answered"; readonly seconds: number }
  | { readonly kind: "failed"; readonly message: string };

/** How good a range is known to be. */
export type RangeProof = {
  /** no range of so many sizes costs less, 1/10,000 minor units */
  readonly boundValue: number;
  /** how much cheaper a range could be at most, as a share of this one's cost */
  readonly gap: number;
  /** whether no range is cheaper: exactly, or to a millionth where the solver says so */
  readonly proven: boolean;
  readonly solver: SolverPart;
};

/** Sizes to stock, what all parcels cost then, and how good that is. */
export type CartonRange = {
  /** in the order of the candidates */
  readonly chosen: readonly number[];
  /** 1/10,000 minor units, parcels that fit none included */
  readonly value: number;
  readonly unpackedParcels: number;
  readonly proof: RangeProof;
};

/**
 * The sizes to stock so that packing all parcels costs least. An exchange of sizes gives a first range; prices of
 * parcels prove how far from the cheapest it can be, and settle most sizes; the few ranges that stay open are tried. Where
 * there are too many, the solver gets a model of them alone. The cost is told by code of its own.
 *
 * @param table what parcels cost in each candidate
 * @param most sizes that may be stocked, a whole number from 1
 * @param means solver, time, clock
 * @param first sizes to begin with, at most so many
 * @returns the range; fewer sizes where more save nothing
 * @throws RangeError for a table that makes no sense or a number of sizes that is not as said
 * @example (await rangeOf(table, 6, means)).chosen // [0, 4, 7, 11, 15, 20]
 */
export async function rangeOf(
  table: RangeTable,
  most: number,
  means: RangeMeans,
  first: readonly number[] = [],
): Promise<CartonRange> {
  checkedTable(table);
  if (!(Number.isInteger(most) && most >= 1)) {
    throw new RangeError(`rangeOf requires a whole number of sizes from 1, got ${most}`);
  }
  const until = means.now() + means.seconds;
  const space = rangeSpace(table, new Set(dominatedSizes(table).map(({ size }) => size)));
  const start = first.filter((size) => space.sizes.includes(size)).slice(0, most);
  const begun = interchangedRange(space, most, new Set(start));
  const open = assignmentBound(space, most, begun, () => means.now() >= until - means.seconds / 2);
  const isTried = open.bound < open.found.value && means.seconds > 0;
  const bounded = (isTried ? triedRange(space, most, open) : null) ?? open;
  if (bounded.bound >= bounded.found.value) return finished(table, bounded, { kind: "not-needed" });
  const { better, part } = await solved(space, most, bounded, { ...means, seconds: until - means.now() });
  return finished(table, better, part);
}

/** Share by which the sums of a solver that proved its answer may be off. */
const ROUNDING = 1e-6;

type Solved = { readonly better: BoundedRange; readonly part: SolverPart };

async function solved(
  space: RangeSpace,
  most: number,
  bounded: BoundedRange,
  { solve, seconds }: RangeMeans,
): Promise<Solved> {
  if (seconds <= 0) return { better: bounded, part: { kind: "no-time" } };
  const model = rangeModel(space, most, bounded.settled);
  const known = model.valuesOf(bounded.found.chosen);
  const isKnown = [...bounded.settled.kept].every((size) => bounded.found.chosen.has(size));
  const isLeft = ![...bounded.settled.dropped].some((size) => bounded.found.chosen.has(size));
  try {
    const answer = await solve(modelText(model.model), {
      seconds,
      gap: 0,
      ...(isKnown && isLeft ? { start: known } : {}),
    });
    const chosen = answer.values === null ? null : model.chosenOf(answer.values);
    if (chosen !== null && chosen.size > most) {
      // A solver that breaks the rule is not believed in its bound either.
      const message = `The solver stocked ${chosen.size} sizes where ${most} may be`;
      return { better: bounded, part: { kind: "failed", message } };
    }
    const part: SolverPart = { kind: "answered", seconds: answer.seconds };
    // What was settled holds for cheaper ranges only: the bound is that of both.
    const modelBound = Math.round(answer.bound * VALUE_PER_MINOR);
    const bound = Math.max(bounded.bound, Math.min(bounded.found.value, modelBound));
    const value = chosen === null ? Number.POSITIVE_INFINITY : spaceValue(space, chosen);
    const isBetter = chosen !== null && value < bounded.found.value;
    return { better: { ...bounded, bound, found: isBetter ? { chosen, value } : bounded.found }, part };
  } catch (error) {
    // Not lost: the answer carries the solver's words.
    const message = error instanceof Error ? error.message : String(error);
    return { better: bounded, part: { kind: "failed", message } };
  }
}

function finished(table: RangeTable, { found, bound }: BoundedRange, solver: SolverPart): CartonRange {
  const asked = [...found.chosen].toSorted((a, b) => a - b);
  const { parcels } = rangeCost(table, asked);
  // A size that takes no parcel is not kept.
  const chosen = asked.filter((_, at) => (parcels[at] ?? 0) > 0);
  const { value, unpackedParcels } = rangeCost(table, chosen);
  const boundValue = Math.min(bound, value);
  const gap = (value - boundValue) / Math.max(1, value);
  const isNear = solver.kind === "answered" ? gap <= ROUNDING : boundValue === value;
  return { chosen, value, unpackedParcels, proof: { boundValue, gap, proven: isNear, solver } };
}
