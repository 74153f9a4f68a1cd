import { placePairAnew, placeSomeAnew, toggleOrder } from "#lib/purchasing/plan/board-moves";
import type { PairSpace } from "#lib/purchasing/plan/pair-space";
import { boardMinor, type PlanBoard, replace, replaceSpace } from "#lib/purchasing/plan/plan-board";
import { type Draw, steadyDraw } from "#lib/purchasing/plan/steady-draw";

/** What a search of the board goes by. */
export type BoardSearch = {
  /** supplies of which one stands in for the other; no supply in two of them */
  readonly pairs: readonly PairSpace[];
  /** by week: price of a litre right after arrivals, minor units; a guide for pairs */
  readonly litreMinor: Float64Array;
  /** how much of the time is gone, from 0; the search ends at 1 */
  readonly gone: () => number;
  /** the search also ends when a board costs no more, minor units */
  readonly enoughMinor: number;
};

/** What a board holds that moves change. */
type Kept = Pick<PlanBoard, "spaces" | "schedules" | "standIns">;

/** Part of the cost that a move may lose at the beginning; none at the end. */
const FIRST_LOSS = 0.003;
/** One move in so many is of a pair. */
const PAIR_EVERY = 6;

/**
 * Betters a board until the time is over, by moves that may lose a little: less and less, so that it comes out of
 * the places where every single move is dearer. The best board on the way is kept.
 *
 * @param board ends as the cheapest that was found, broken limits fined
 * @param search pairs, price of room, time
 * @source simulated annealing, Kirkpatrick, Gelatt & Vecchi (1983), with losses allowed up to a limit drawn each time
 *   instead of by their exponential chance; from memory
 */
export function searchBoard(board: PlanBoard, search: BoardSearch): void {
  if (board.orders.length === 0) return;
  const draw = steadyDraw();
  let now = boardMinor(board);
  let best = { ...kept(board), minor: now };
  const scale = FIRST_LOSS * Math.abs(now);
  let gone = search.gone();
  for (let turn = 0; gone < 1 && best.minor > search.enoughMinor; turn++) {
    const before = kept(board);
    move(board, search, turn, draw);
    const minor = boardMinor(board);
    if (minor < now + (scale * (1 - gone) * draw(PARTS)) / PARTS) {
      now = minor;
      if (minor < best.minor - LEAST_GAIN) best = { ...kept(board), minor };
    } else restore(board, before);
    gone = search.gone();
  }
  restore(board, best);
}

const PARTS = 1_000;
const LEAST_GAIN = 0.01;

function move(board: PlanBoard, { pairs, litreMinor }: BoardSearch, turn: number, draw: Draw): void {
  // Every pair once, then one now and then.
  const pair = turn < pairs.length ? pairs[turn] : pairs[draw(pairs.length * PAIR_EVERY)];
  const order = board.orders[draw(board.orders.length)];
  const kind = draw(KINDS);
  if (pair !== undefined) placePairAnew(board, pair, litreMinor, draw);
  else if (order !== undefined && kind > 1) toggleOrder(board, order, draw);
  else
    placeSomeAnew(board, [...((kind === 1 ? order?.supplyIndexes : undefined) ?? board.spaces.keys())], draw);
}

/** Two kinds place some supplies anew; the others, four times in six, open or close an order. */
const KINDS = 6;

const kept = ({ spaces, schedules, standIns }: PlanBoard): Kept => ({
  spaces: [...spaces],
  schedules: [...schedules],
  standIns,
});

function restore(board: PlanBoard, { spaces, schedules, standIns }: Kept): void {
  board.standIns = standIns;
  spaces.forEach((space, index) => {
    if (board.spaces[index] !== space) replaceSpace(board, index, space);
  });
  schedules.forEach((schedule, index) => {
    if (board.schedules[index] !== schedule) replace(board, index, schedule);
  });
}
