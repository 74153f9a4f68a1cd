import { type BoardSearch, searchBoard } from "#lib/purchasing/plan/board-search";
import type { ModelSlot, ModelSupply } from "#lib/purchasing/plan/model-columns";
import { type PairSpace, pairSpace } from "#lib/purchasing/plan/pair-space";
import { boardLines, planBoard, replace } from "#lib/purchasing/plan/plan-board";
import type { PlanChoice } from "#lib/purchasing/plan/plan-choice";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { SharedBound } from "#lib/purchasing/plan/shared-bound";

/** A broken limit, or an order below its least, costs so many times what it saves. */
const FINE = 30;
/** Moves of pairs look at so many states at most, so that each takes some milliseconds. */
const MOST_STATES = 8_000;
const MOST_CELLS = 6;

/**
 * A known plan bettered by many small changes, until the time is over.
 *
 * @param question all of the plan
 * @param supplies supplies with their slots
 * @param slots all slots, by number
 * @param known a plan that keeps every limit
 * @param proof pairs and prices of a bound; without, stand-ins stay as they are
 * @param until when the search ends
 * @returns a plan that may break a limit where that is cheaper than its fine
 */
export function searchedChoice(
  question: PlanQuestion,
  supplies: readonly ModelSupply[],
  slots: readonly ModelSlot[],
  known: PlanChoice,
  proof: SharedBound["proof"],
  until: Pick<BoardSearch, "gone" | "enoughMinor">,
): PlanChoice {
  const board = planBoard(question, supplies, slots, known.standIns);
  board.penalty = FINE;
  board.limitPenalty = FINE;
  const packs = new Map(known.lines.map((line) => [`${line.week} ${line.offerId}`, line.packs]));
  for (const of of supplies) {
    const own = of.slots.flatMap((slot): [number, number][] => {
      const count = packs.get(`${slot.week} ${slot.offer.id}`);
      return count === undefined ? [] : [[slot.number, count]];
    });
    replace(board, of.index, { packs: new Map(own), minor: 0 });
  }
  const pairs = (proof?.parts.pairs ?? []).map(({ space }) => coarser(space, question.weeks));
  const litreMinor = proof?.prices.litre ?? new Float64Array(question.weeks);
  searchBoard(board, { pairs, litreMinor, ...until });
  return { lines: boardLines(board), standIns: board.standIns };
}

function coarser({ from, to, ratio }: PairSpace, weeks: number): PairSpace {
  const cells = Math.floor(MOST_STATES / (from.levels.length * to.levels.length));
  return pairSpace(from.of, to.of, ratio, weeks, Math.max(2, Math.min(MOST_CELLS, cells)));
}
