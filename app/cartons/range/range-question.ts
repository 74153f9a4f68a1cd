import type { OfferedCarton } from "#lib/cartons/cost/packed-load";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import type { RangeLoad } from "#lib/cartons/range/cost-table";
import { cartonMass } from "#lib/packing/carton-mass";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { rangeHash } from "#prisma/records/carton-ranges";
import { boardUmOf } from "../carton-board";
import type { CartonShelf } from "../read-carton-shelf";
import { type BuyableSize, rangeSizes } from "./range-sizes";
import type { ShopRangeTask } from "./shop-range";

/** A candidate of the range: on the shelf today, or one that could be bought. */
export type RangeCandidate = {
  readonly offered: OfferedCarton;
  readonly name: string;
  readonly isToday: boolean;
  /** cartons on hand; null where never counted */
  readonly onHand: number | null;
  readonly isPriceGuess: boolean;
};

/** What is asked: past parcels, candidates, and the key of the answer. */
export type RangeQuestion = {
  readonly hash: string;
  readonly parcels: number;
  readonly candidates: readonly RangeCandidate[];
  readonly task: ShopRangeTask;
};

/** The question, or why there is none. */
export type RangeReading =
  | { readonly kind: "question"; readonly question: RangeQuestion }
  | { readonly kind: "unreadable"; readonly message: string }
  | { readonly kind: "none"; readonly reason: "no-parcels" | "no-fill" | "no-sizes" };

const MOST_RANGE = 10;
const SECONDS = 30;
const SAME_SIZE_UM = 2_000;

/**
 * What the range is worked out from: the past year's parcels, today's cartons and the sizes that could be bought.
 *
 * @param shelf cartons, what was packed, and what packing costs
 * @param style the shop's usual cushion style
 * @param text sizes that could be bought, as typed
 * @param shop how bare numbers and money are read
 */
export function rangeQuestion(
  shelf: CartonShelf,
  style: CushionStyle,
  text: string,
  shop: Parameters<typeof rangeSizes>[1],
): RangeReading {
  const read = rangeSizes(text, shop, shelf.cartons);
  if (read.kind === "unreadable") return read;
  const terms = shelf.termsIn(style)?.terms;
  if (terms === undefined) return { kind: "none", reason: "no-fill" };
  const { loads } = shelf.packed;
  if (loads.length === 0) return { kind: "none", reason: "no-parcels" };
  const candidates = allCandidates(shelf, read.sizes);
  if (candidates.length === 0) return { kind: "none", reason: "no-sizes" };
  const cushionUm = Math.round(shelf.habits.cushionUm.usual);
  const { fill, tape, bulgeUm } = terms;
  const task: ShopRangeTask = {
    loads: loads.map(({ load, kind, clearance }): RangeLoad => ({ load, parcels: kind.parcels, clearance })),
    offered: candidates.map((candidate) => candidate.offered),
    terms: {
      ...{ fill, tape, bulgeUm, effort: QUICK_EFFORT },
      clearance: { wallsUm: cushionUm, baseUm: cushionUm, topUm: cushionUm },
    },
    postage: shelf.postage,
    shipDay: shelf.today,
    today: candidates.flatMap(({ isToday }, at) => (isToday ? [at] : [])),
    onHand: candidates.map(({ onHand }) => onHand),
    most: Math.min(MOST_RANGE, candidates.length),
    seconds: SECONDS,
  };
  const { shipDay: _day, onHand: _stock, ...lasting } = task;
  const parcels = task.loads.reduce((sum, load) => sum + load.parcels, 0);
  return { kind: "question", question: { hash: rangeHash(lasting), parcels, candidates, task } };
}

function allCandidates(shelf: CartonShelf, sizes: readonly BuyableSize[]): RangeCandidate[] {
  const today = shelf.cartons.map(
    ({ id, name, inside, boardUm, massMg, value, onHand }): RangeCandidate => ({
      offered: { id, inside, boardUm, massMg, value: value ?? 0 },
      name,
      isToday: true,
      onHand,
      isPriceGuess: value === null,
    }),
  );
  const others = sizes.flatMap(({ name, inside, value, isPriceGuess }, at): RangeCandidate[] => {
    const isThere = shelf.cartons.some((carton) =>
      (["lengthUm", "widthUm", "heightUm"] as const).every(
        (side) => Math.abs(carton.inside[side] - inside[side]) <= SAME_SIZE_UM,
      ),
    );
    if (isThere) return [];
    const massMg = cartonMass(inside, shelf.habits.boardPoundsPerSquareFoot);
    const offered = {
      id: `size-${at}`,
      inside,
      boardUm: boardUmOf({ wall: "single", flutes: null }),
      massMg,
      value,
    };
    return [{ offered, name, isToday: false, onHand: null, isPriceGuess }];
  });
  return [...today, ...others];
}
