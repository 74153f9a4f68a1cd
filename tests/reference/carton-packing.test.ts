import { describe, expect, it } from "vitest";
import { cartonFit } from "#lib/cartons/fit/carton-fit";
import { QUICK_EFFORT, USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { fitProblem } from "#lib/cartons/fit/fit-problem";
import type { FitQuestion, WrappedPiece } from "#lib/cartons/fit/fit-question";
import { pairSearch } from "#lib/cartons/fit/pair-search";
import { placementFaults } from "#lib/cartons/fit/placement-faults";
import { blockSides, type Sides, sidesBlock } from "#lib/cartons/fit/sides";
import { blockVolume } from "#lib/packing/block";
import { evenRandom } from "#lib/statistics/even-random";
import { cutSet } from "../../app/command-line/bench/cartons/cut-set";
import { checkPublishedCases, type GivenCase, readCases } from "./published-cases";

// Each case of data/carton-packing-cases.json carries its own source and address. What follows them is held against a
// search of our own that shares nothing with the program.

const CASES = readCases<"cases">("carton-packing-cases.json").cases;
const NO_CLEARANCE = { wallsUm: 0, baseUm: 0, topUm: 0 };
/** Sets of more than ten pieces are no parcels: a quick look is enough to catch a wrong no. */
const fitOf = (question: FitQuestion) =>
  cartonFit(question, question.pieces.length > 10 ? QUICK_EFFORT : USUAL_EFFORT);

const groups = (numbers: readonly number[], size: number): number[][] =>
  Array.from({ length: numbers.length / size }, (_, at) => numbers.slice(at * size, (at + 1) * size));
const sides = ([length = 0, width = 0, height = 0]: readonly number[]): Sides => [length, width, height];

function questionOf(given: GivenCase): FitQuestion {
  const pieces = groups(given.numbers("pieces"), 4).flatMap(([count = 0, ...own]) =>
    Array.from({ length: count }, () => ({ block: sidesBlock(sides(own)), upright: false })),
  );
  return { pieces, inside: sidesBlock(sides(given.numbers("box"))), clearance: NO_CLEARANCE };
}

/** The printed packing, its blocks in the order of pieces with the same sides. */
function witnessOf(given: GivenCase, { pieces }: FitQuestion) {
  const left = groups(given.numbers("witness"), 6).map(([length = 0, width = 0, height = 0, ...at]) => ({
    turned: sidesBlock([length, width, height]),
    alongUm: at[0] ?? Number.NaN,
    acrossUm: at[1] ?? Number.NaN,
    upUm: at[2] ?? Number.NaN,
  }));
  const sorted = (block: WrappedPiece["block"]) =>
    blockSides(block)
      .toSorted((a, b) => a - b)
      .join();
  return pieces.flatMap(({ block }) => {
    const at = left.findIndex(({ turned }) => sorted(turned) === sorted(block));
    return at < 0 ? [] : left.splice(at, 1);
  });
}

const withoutLast = (question: FitQuestion): FitQuestion => ({
  ...question,
  pieces: question.pieces.slice(0, -1),
});

checkPublishedCases("blocks in a box", CASES, [
  [
    // Known puzzles: the printed packing passes the checker.
    /^pk-00[1238]$/,
    (given) => {
      const question = questionOf(given);
      const witness = witnessOf(given, question);
      expect(placementFaults(question, witness)).toEqual([]);
      const [first, second] = witness;
      if (!first || !second) throw new Error(`no packing of ${given.id}`);
      expect(placementFaults(question, witness.with(1, { ...second, ...first })).length).toBeGreaterThan(0);
      given.meets("feasible", fitOf(question).kind !== "does-not-fit");
      // How many packings there are is printed; the program looks for one.
      if (given.expects("distinctSolutionsUpToSymmetry")) given.notReckoned("distinctSolutionsUpToSymmetry");
    },
  ],
  [
    // 27 bricks: an argument by colours, which the program does not know. It must not say yes, and no less of 26.
    /^pk-004$/,
    (given) => {
      const question = questionOf(given);
      given.meets("feasible", fitOf(question).kind === "fits");
      expect(question.pieces).toHaveLength(27);
      given.meets("maxPieces", withoutLast(question).pieces.length);
      expect(fitOf(withoutLast(question)).kind).not.toBe("does-not-fit");
    },
  ],
  [
    /^pk-00[57]$/,
    (given) => {
      expect(fitOf(questionOf(given)).kind).toBe("does-not-fit");
      given.meets("feasible", false);
    },
  ],
  [
    /^pk-(006|009|01[01])$/,
    (given) => {
      const question = questionOf(given);
      given.meets("feasible", fitOf(question).kind === "fits");
      if (!given.expects("fill")) return;
      const filled = question.pieces.reduce((sum, { block }) => sum + blockVolume(block), 0);
      given.meets("fill", filled / blockVolume(question.inside));
    },
  ],
]);

it("the program finds the puzzle of nine pieces by itself", () => {
  const one = CASES.find(({ id }) => id === "pk-001");
  const pieces = [...copies(6, [1, 2, 2]), ...copies(3, [1, 1, 1])];
  expect(one?.input["pieces"]).toEqual([6, 1, 2, 2, 3, 1, 1, 1]);
  expect(fitOf({ pieces, inside: sidesBlock([3, 3, 3]), clearance: NO_CLEARANCE }).kind).toBe("fits");
});

function copies(count: number, own: Sides): WrappedPiece[] {
  return Array.from({ length: count }, () => ({ block: sidesBlock(own), upright: false }));
}

/**
 * Tries every place of every piece on a grid of one unit. With whole sides that is enough: push all pieces of a packing as
 * far as they go towards one corner, axis by axis, and each lies against the wall or another piece, so that its corner is a
 * sum of whole sides.
 */
function fitsOnGrid({ pieces, inside }: FitQuestion): boolean {
  const volume = ({ block }: WrappedPiece) => blockVolume(block);
  const largestFirst = pieces.toSorted((a, b) => volume(b) - volume(a));
  const taken: { readonly from: Sides; readonly to: Sides }[] = [];
  const place = (at: number): boolean => {
    const piece = largestFirst[at];
    if (piece === undefined) return true;
    return turnsOf(piece).some((turn) =>
      cornersFor(blockSides(inside), turn).some((from) => {
        const to: Sides = [from[0] + turn[0], from[1] + turn[1], from[2] + turn[2]];
        if (taken.some((other) => overlap(from, to, other.from, other.to))) return false;
        taken.push({ from, to });
        const isPlaced = place(at + 1);
        taken.pop();
        return isPlaced;
      }),
    );
  };
  return place(0);
}

function turnsOf({ block, upright }: WrappedPiece): Sides[] {
  const [a, b, c] = blockSides(block);
  const plan: Sides[] = [
    [a, b, c],
    [b, a, c],
  ];
  const tipped: Sides[] = [
    [a, c, b],
    [c, a, b],
    [b, c, a],
    [c, b, a],
  ];
  const turns = upright ? plan : [...plan, ...tipped];
  return [...new Map(turns.map((turn) => [turn.join(), turn])).values()];
}

function cornersFor(box: Sides, turn: Sides): Sides[] {
  const from = (axis: 0 | 1 | 2) =>
    Array.from({ length: Math.max(0, box[axis] - turn[axis] + 1) }, (_, at) => at);
  return from(0).flatMap((x) => from(1).flatMap((y) => from(2).map((z): Sides => [x, y, z])));
}

function overlap(from: Sides, to: Sides, otherFrom: Sides, otherTo: Sides): boolean {
  return (
    from[0] < otherTo[0] &&
    otherFrom[0] < to[0] &&
    from[1] < otherTo[1] &&
    otherFrom[1] < to[1] &&
    from[2] < otherTo[2] &&
    otherFrom[2] < to[2]
  );
}

/** Pieces of 1 to 4, four in ten like the one before, a quarter upright. */
function smallQuestion(random: () => number, least: number, most: number): FitQuestion {
  const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
  const three = (from: number, to: number): Sides => [whole(from, to), whole(from, to), whole(from, to)];
  const pieces: WrappedPiece[] = [];
  for (let left = whole(least, most); left > 0; left--) {
    const last = pieces.at(-1);
    const isLike = last !== undefined && random() < 0.4;
    pieces.push(isLike ? last : { block: sidesBlock(three(1, 4)), upright: random() < 0.25 });
  }
  return { pieces, inside: sidesBlock(three(2, 6)), clearance: NO_CLEARANCE };
}

const STATES = 1_000_000;

describe("small questions", () => {
  it.each([
    { questions: 10_000, least: 2, most: 4, seed: 2026 },
    { questions: 1_000, least: 5, most: 6, seed: 2027 },
  ])(
    "$questions of $least to $most pieces are answered as by trying every place",
    ({ questions, least, most, seed }) => {
      const random = evenRandom(seed);
      const reasons = new Map<string, number>();
      for (let at = 0; at < questions; at++) {
        const question = smallQuestion(random, least, most);
        const fit = fitOf(question);
        const reason = fit.kind === "does-not-fit" ? fit.reason.kind : fit.kind;
        reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
        const isFitting = fitsOnGrid(question);
        expect(fit.kind, JSON.stringify(question)).toBe(isFitting ? "fits" : "does-not-fit");
        // The search of all arrangements by itself: most that fit are found without it.
        const end = pairSearch(fitProblem(question).problem, STATES, "pairs");
        expect(end.kind, JSON.stringify(question)).toBe(isFitting ? "found" : "none");
      }
      // Each kind of answer was put to the test.
      for (const kind of ["fits", "all-searched", "two-too-large", "volume", "piece-too-large"]) {
        expect(reasons.get(kind) ?? 0, kind).toBeGreaterThanOrEqual(questions / 200);
      }
    },
  );
});

describe("boxes cut to pieces", () => {
  // The idea of class 9 of Martello, Pisinger & Vigo (2000): cut a full box, so that the answer is known; see cutSet.
  it.each([6, 8, 10])(
    "of %i pieces that fill four fifths are packed again in 95 of 100 sets at least",
    (count) => {
      const sets = Array.from({ length: 40 }, (_, seed) => cutSet(1000 * count + seed, count, 0.8));
      const found = sets.filter((set) => fitOf(set).kind === "fits").length;
      expect(found / sets.length).toBeGreaterThanOrEqual(0.95);
    },
  );
});
