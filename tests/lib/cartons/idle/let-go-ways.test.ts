import { describe, expect, it } from "vitest";
import { type LetGoQuestion, letGoWays } from "#lib/cartons/idle/let-go-ways";
import type { KeepFigure } from "#lib/cartons/keeping/keep-figure";
import { carton, IN, inches } from "../choice/mug-bench";

const sits = carton("cube-8", [8, 8, 8], 80, { ageing: "sits", onHand: 7 });
const KEEP: KeepFigure = { kind: "keep", keep: 7, letGo: 0, keepYears: 3, reason: "usedInTime" };
const LET_GO: KeepFigure = { kind: "letGo", keep: 2, letGo: 5, keepYears: null, reason: "notUsed" };
const heights = [{ heightUm: 150_000, itemTypeIds: ["mug"], parcels: 3 }];
const others = [14, 12, 9, 16, 18].map((side) => ({ id: `cube-${side}`, inside: inches(side, side, side) }));
const question: LetGoQuestion = {
  ...{ carton: sits, isDamaged: false, fitting: 4, heights, figure: KEEP, others, gapUm: IN },
};
const kinds = (more: Partial<LetGoQuestion>) => letGoWays({ ...question, ...more }).map(({ kind }) => kind);

describe("ways to let a carton go", () => {
  it("are to cut it down for what fits, and to stop buying it, where it is sound and used at times", () => {
    expect(letGoWays(question)).toEqual([
      { kind: "cutDown", heights },
      { kind: "stopBuying", reason: "sits" },
    ]);
  });

  // Blank of a board maker's formula: (2 x 8 + 2 x 8 + 2) x (8 + 8) = 544 sq in.
  it("are pads or a gift of what does not pay to keep, where nothing fitted in a year", () => {
    expect(letGoWays({ ...question, heights: [], fitting: 0, figure: LET_GO })).toEqual([
      { kind: "pads", reason: "nothingFits", cartons: 5, boardEachUm2: 544 * IN * IN },
      { kind: "giveAway", cartons: 5 },
      { kind: "stopBuying", reason: "sits" },
    ]);
    expect(kinds({ heights: [], fitting: 0, figure: KEEP })).toEqual(["stopBuying"]);
    expect(kinds({ heights: [], fitting: 2, figure: LET_GO })).toEqual(["stopBuying"]);
  });

  it("are an inner box and pads where it is damaged, never a cut or a gift", () => {
    const ways = letGoWays({ ...question, isDamaged: true, fitting: 0, figure: LET_GO });
    expect(ways.map(({ kind }) => kind)).toEqual(["innerBox", "pads", "stopBuying"]);
    // 8 in and 4 mm of board leave an inch in 12 in and more, not in 9.
    expect(ways[0]).toMatchObject({ reason: "damaged", outerIds: ["cube-12", "cube-14", "cube-16"] });
    expect(ways[1]).toMatchObject({ reason: "damaged", cartons: 7 });
  });

  it("are an inner box where it may not be sent in: unrated, or too weak for fragile goods", () => {
    for (const rating of [{ kind: "unrated" }, { kind: "burst", wall: "single", psi: 125 }] as const) {
      expect(kinds({ carton: { ...sits, rating } })).toEqual(["innerBox", "stopBuying"]);
      expect(kinds({ carton: { ...sits, rating }, others: [] })).toEqual(["stopBuying"]);
    }
  });

  it("are none for a saved carton that is best left alone, as none is bought", () => {
    expect(kinds({ carton: { ...sits, isSaved: true }, heights: [] })).toEqual([]);
  });

  it("are to stop buying what moves where there is more than pays", () => {
    const moves = { ...sits, ageing: "moves" } as const;
    const figure = { ...LET_GO, keepYears: 3, reason: "moreThanPays" } as const;
    expect(letGoWays({ ...question, carton: moves, heights: [], figure })).toEqual([
      { kind: "stopBuying", reason: "moreThanPays" },
    ]);
  });

  it("do not know how many damaged ones there are before the count", () => {
    for (const onHand of [null, -3]) {
      const ways = letGoWays({ ...question, carton: { ...sits, onHand }, isDamaged: true, others: [] });
      expect(ways[0]).toMatchObject({ kind: "pads", cartons: null });
    }
  });
});
