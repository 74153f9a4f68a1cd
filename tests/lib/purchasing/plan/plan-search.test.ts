import { describe, expect, it } from "vitest";
import { isNear, planSearch } from "#lib/purchasing/plan/plan-search";
import { plainOffer, plainQuestion, plainSupplier, plainSupply, smallQuestion } from "./small-question";

const means = (seconds: number, gap: number) => ({
  solve: () => Promise.reject(new Error("not asked")),
  seconds,
  gap,
  now: () => performance.now() / 1_000,
});

describe("a plan and a bound without the solver", () => {
  it("spares the solver where the plan is within the gap of the bound, else leaves it to be asked", () => {
    const question = smallQuestion(5);
    expect(planSearch(question, means(5, 0.01), 5)).toMatchObject({ why: { kind: "spared" }, isMet: true });
    expect(planSearch(question, means(5, 0), 5)).toMatchObject({ why: null });
    expect(planSearch(question, means(0, 0.01), 0)).toMatchObject({
      why: { kind: "no-time" },
      bound: Number.NEGATIVE_INFINITY,
    });
  });

  it("spares the solver where the question is too large for it, and keeps to the time", () => {
    const ids = Array.from({ length: 12 }, (_, index) => `supply ${index}`);
    const weeks = 20;
    const use = Array.from({ length: weeks }, (_, week) => 1 + (week % 3));
    const question = plainQuestion({
      supplies: ids.map((id) => plainSupply(id, use, { shortMinor: 500 })),
      suppliers: ["north", "south"].map((id) => plainSupplier(id, weeks, { deliveryMinor: 500 })),
      offers: ids.flatMap((id) => [
        plainOffer(id, "north", { unitsPerPack: 7 }),
        plainOffer(id, "south", { unitsPerPack: 9, steps: [{ fromPacks: 1, priceMinor: 130 }] }),
      ]),
      limits: { cash: [{ throughWeek: 10, minor: 6_000 }], litres: 200 },
    });
    // A clock that moves with each look at it.
    let now = 0;
    const clock = { ...means(5, 0), now: () => (now += 0.002) };
    const found = planSearch(question, clock, 5);
    expect(found.why).toEqual({ kind: "spared" });
    expect(found.bound).toBeLessThanOrEqual(found.plan?.costs.totalMinor ?? 0);
    expect(now).toBeLessThan(5);
  });
});

describe("near a bound", () => {
  it("is within the share of the cost, never without a bound", () => {
    expect([isNear(100, 99, 0.01), isNear(100, 98.9, 0.01)]).toEqual([true, false]);
    expect(isNear(100, Number.NEGATIVE_INFINITY, 0.5)).toBe(false);
  });
});
