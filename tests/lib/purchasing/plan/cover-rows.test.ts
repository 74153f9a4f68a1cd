import { describe, expect, it } from "vitest";
import { planModel } from "#lib/purchasing/plan/plan-model";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

describe("rows of whole packs", () => {
  it("round up what must arrive, for each size of pack", () => {
    const question = plainQuestion({
      supplies: [plainSupply("paper", [25])],
      suppliers: [plainSupplier("north", 1)],
      offers: [
        plainOffer("paper", "north", { id: "small", unitsPerPack: 10 }),
        plainOffer("paper", "north", { id: "large", unitsPerPack: 20 }),
      ],
    });
    const rows = planModel(question).model.rows.filter(({ name }) => name.startsWith("packs"));
    // 25 in packs of 10 is 2.5: 3 small ones, a large one counts 2; in packs of 20 it is 1.25: a small one counts
    // min(1, 0.5 / 0.25) = 1. What is owed counts 1 / (10 * 0.5) and 1 / (20 * 0.25) a unit, in scales of 20.
    expect(rows.map(({ terms, lower }) => [lower, terms.map(([factor]) => factor)])).toEqual([
      [3, [1, 2, 4]],
      [2, [1, 1, 4]],
    ]);
  });
});
