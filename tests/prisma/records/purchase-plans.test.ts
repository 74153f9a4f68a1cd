import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import type { PlanAnswer } from "#lib/purchasing/plan/purchase-plan";
import { keepPlan, planOf, questionHash } from "#prisma/records/purchase-plans";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const question: PlanQuestion = {
  weeks: 1,
  supplies: [
    {
      id: "paper",
      stock: 3,
      arrivals: [0],
      use: [2],
      wanted: [1],
      most: [Infinity],
      endValueMinor: 1,
      shortMinor: 9,
      holdingMinor: 0,
      litres: 0,
    },
  ],
  suppliers: [],
  offers: [],
  substitutes: [],
  limits: { cash: [], litres: null },
  aim: { kind: "cheapest" },
};
const answer: PlanAnswer = { kind: "impossible", limits: [], nearest: null, leftOut: [] };
const plan = (hash: string, madeAt: string) => ({ hash, day: "2026-11-25", answer, madeAt });

describe("kept purchase plans", () => {
  it("have the same key for the same question, another for any change, endless limits too", () => {
    expect(questionHash(structuredClone(question))).toBe(questionHash(question));
    const [supply] = question.supplies;
    if (supply === undefined) throw new RangeError("the question has a supply");
    const changed = { ...question, supplies: [{ ...supply, most: [1e9] }] };
    expect(questionHash(changed)).not.toBe(questionHash(question));
    expect(questionHash({ ...question, aim: { kind: "urgent" } })).not.toBe(questionHash(question));
  });

  it("come back as they were kept, the last one for a question", async () => {
    expect(await planOf(shop.db, "a")).toBeNull();
    await keepPlan(shop.db, plan("a", "2026-11-25T10:00:00.000Z"));
    await keepPlan(shop.db, plan("a", "2026-11-25T11:00:00.000Z"));
    expect(await planOf(shop.db, "a")).toEqual({ answer, madeAt: "2026-11-25T11:00:00.000Z" });
  });

  it("are forgotten, the oldest first, when there are many", async () => {
    for (let index = 0; index < 42; index += 1) {
      await keepPlan(shop.db, plan(`${index}`, `2026-11-25T10:00:${String(index).padStart(2, "0")}.000Z`));
    }
    expect(await planOf(shop.db, "1")).toBeNull();
    expect(await planOf(shop.db, "2")).not.toBeNull();
    expect(await planOf(shop.db, "41")).not.toBeNull();
  });
});
