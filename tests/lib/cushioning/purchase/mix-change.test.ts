import { afterAll, describe, expect, it } from "vitest";
import { dearerOffers } from "#lib/cushioning/purchase/dearer-offers";
import { mixChange } from "#lib/cushioning/purchase/mix-change";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { soldOut } from "#lib/cushioning/purchase/sold-out";
import { type MixPlan, solvedMix } from "#lib/cushioning/purchase/solved-mix";
import { endSolver } from "../../../../app/solver/solve-in-worker";
import { exactMeans, plainMix, plainMixOffer, plainMixSupply, plainWay } from "./small-mix";

afterAll(endSolver);

const changed = async (before: MixPlan, other: MixQuestion) =>
  mixChange(other, before, await solvedMix(other, exactMeans, []));

// 10 cups: paper 640 each and nothing else, 60 sheets on hand; bubble 500 each and 10 sq ft, a roll of 50 for 600.
const question = plainMix({
  supplies: [plainMixSupply("paper", { onHand: 60 }), plainMixSupply("bubble")],
  offers: [plainMixOffer("bubble", { unitsPerPack: 50, steps: [{ fromPacks: 1, priceMinor: 600 }] })],
  types: [
    {
      id: "cup",
      parcels: 10,
      ways: [plainWay("paper", "paper", 6, 640), plainWay("bubble", "bubble", 10, 500)],
    },
  ],
});

describe("a change of the question", () => {
  it("tells how much dearer the plan gets, within which range, and which types switch", async () => {
    const before = await solvedMix(question, exactMeans, []);
    // Two rolls: 5000 + 1200 = 6200; with rolls at 720: 5000 + 1440 = 6440, on paper 6400.
    expect(before.costs.totalMinor).toBeCloseTo(6200, 6);
    const dearer = await changed(before, dearerOffers(question, ["bubble"], 0.2));
    expect(dearer.plan.costs.totalMinor).toBeCloseTo(6400, 6);
    expect(dearer.moreMinor).toBeCloseTo(200, 6);
    expect(dearer.moreRange?.fromMinor).toBeCloseTo(200, 6);
    expect(dearer.moreRange?.toMinor).toBeCloseTo(200, 6);
    expect(dearer.switched).toEqual([
      {
        typeId: "cup",
        styles: [
          { style: "paper", before: 0, after: 10 },
          { style: "bubble", before: 10, after: 0 },
        ],
      },
    ]);
  });

  it("tells what is then left undone, and gives no range of totals that cannot be compared", async () => {
    const little = {
      ...question,
      supplies: question.supplies.map((supply) => ({
        ...supply,
        onHand: 30 * Number(supply.id === "paper"),
      })),
    };
    const before = await solvedMix(little, exactMeans, []);
    expect(before.lack.parcels).toBe(0);
    const gone = await changed(before, soldOut(little, ["bubble"]));
    expect(gone.moreUndone.parcels).toBeCloseTo(5, 6);
    expect(gone.moreRange).toBeNull();
    expect(gone.plan.unpacked).toEqual([{ typeId: "cup", parcels: expect.closeTo(5, 6) }]);
  });
});
