import { afterAll, describe, expect, it } from "vitest";
import { blockingLimits } from "#lib/purchasing/plan/blocking-limits";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { endSolver, solveInWorker } from "../../../../app/solver/solve-in-worker";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

afterAll(endSolver);

/** Six of paper are used in each of two weeks; packs of 3 cost 100. */
const question = (changes: Partial<PlanQuestion>, supplier: object = {}, paper: object = {}) =>
  plainQuestion({
    supplies: [plainSupply("paper", [6, 6], { litres: 2, ...paper })],
    suppliers: [plainSupplier("north", 2, supplier)],
    offers: [plainOffer("paper", "north", { unitsPerPack: 3 })],
    ...changes,
  });
const blocked = (of: PlanQuestion) => blockingLimits(of, solveInWorker, { seconds: 10, gap: 0 });

describe("limits that block a plan", () => {
  it("are none where every need can be met, however dear", async () => {
    expect(await blocked(question({}))).toEqual([]);
    expect(
      await blocked(question({ limits: { cash: [{ throughWeek: 1, minor: 400 }], litres: 12 } })),
    ).toEqual([]);
  });

  it("name cash and the sum that is lacking", async () => {
    const cash = [{ throughWeek: 1, minor: 330 }];
    expect(await blocked(question({ limits: { cash, litres: null } }))).toEqual([
      { kind: "cash", throughWeek: 1, limitMinor: 330, byMinor: 70 },
    ]);
  });

  it("stand in the way of the wanted stock too where it must be kept", async () => {
    // Twelve used and three wanted at the end take five packs; four are paid for.
    const limits = { cash: [{ throughWeek: 1, minor: 400 }], litres: null };
    expect(await blocked(question({ limits }, {}, { wanted: [3, 3] }))).toEqual([]);
    expect(await blocked(question({ limits, keepsWanted: true }, {}, { wanted: [3, 3] }))).toEqual([
      { kind: "cash", throughWeek: 1, limitMinor: 400, byMinor: 100 },
    ]);
  });

  it("name a least order above the cash", async () => {
    // Four packs are needed, and so is an order of 900: the cash must rise to it, or the least order fall.
    const cash = [{ throughWeek: 1, minor: 500 }];
    const found = await blocked(question({ limits: { cash, litres: null } }, { leastOrderMinor: 900 }));
    expect(found).toEqual([{ kind: "least-order", supplierId: "north", limitMinor: 900, byMinor: 400 }]);
  });

  it("name the room, also where what is there already is too much", async () => {
    expect(await blocked(question({ limits: { cash: [], litres: 10 } }))).toEqual([
      { kind: "room", limitLitres: 10, byLitres: expect.closeTo(2, 6) },
    ]);
    expect(await blocked(question({ limits: { cash: [], litres: 10 } }, {}, { stock: 20 }))).toEqual([
      { kind: "room", limitLitres: 10, byLitres: expect.closeTo(30, 6) },
    ]);
  });

  it("name a most stock that holds less than a week's use", async () => {
    expect(await blocked(question({}, {}, { most: [5, 5] }))).toEqual([
      { kind: "most-stock", supplyId: "paper", limitUnits: 5, byUnits: expect.closeTo(1, 6) },
    ]);
  });
});
