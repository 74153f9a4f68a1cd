import { describe, expect, it } from "vitest";
import { costInCarton } from "#lib/cartons/choice/cost-in-carton";
import { fitBook } from "#lib/cartons/choice/fit-book";
import { carriedLoad, firstHeld } from "#lib/cartons/choice/held-load";
import { pricedCartons } from "#lib/cartons/choice/priced-carton";
import { milligrams } from "#lib/units/mass";
import { carton, MUG, MUG_TERMS, mugRequest } from "./mug-bench";

const { clearance, effort, loadType, trust } = mugRequest([]);
const use = { type: loadType, trust };
const cube8 = carton("cube-8", [8, 8, 8], 80);

describe("whether a carton may be sent with a load", () => {
  // A national post's guide to packing, 2002: 45 lb for fragile goods at 200 psi. Reused board is trusted with 70 % of it, a
  // guess, so 31.5 lb.
  it("goes by the mass of the parcel, and by the condition of the board", () => {
    const cost = costInCarton(MUG, cube8, MUG_TERMS);
    if (cost === null) throw new Error("the mug goes in an 8 in cube");
    const at = (pounds: number, condition: "new" | "reused") =>
      carriedLoad(
        { ...cube8, condition },
        { ...cost, massMg: milligrams(Math.round(pounds * 453_592.37)) },
        use,
      );
    expect(at(45, "new").kind).toBe("carries");
    expect(at(45.1, "new")).toMatchObject({ kind: "over", limit: { measure: "weight" } });
    expect(at(31.5, "reused")).toMatchObject({
      kind: "carries",
      strength: { trustedPercent: 70, isGuess: true },
    });
    expect(at(31.6, "reused").kind).toBe("over");
  });
});

describe("the first carton that holds a load", () => {
  it("comes with the reasons why those before it do not, in their order", () => {
    const cartons = [
      carton("low", [8, 8, 5], 10),
      carton("unrated", [8, 8, 8], 10, { rating: { kind: "unrated" } }),
      cube8,
      carton("cube-10", [10, 10, 10], 100),
    ];
    const fitIn = fitBook({ pieces: MUG.pieces, clearance, effort });
    const { held, before } = firstHeld(pricedCartons(MUG, cartons, MUG_TERMS), { fitIn, use });
    expect(held?.carton.id).toBe("cube-8");
    expect(before.map(({ cartonId, reason }) => [cartonId, reason.kind])).toEqual([
      ["low", "doesNotFit"],
      ["unrated", "innerOnly"],
    ]);
    const none = firstHeld(pricedCartons(MUG, cartons.slice(0, 2), MUG_TERMS), { fitIn, use });
    expect([none.held, none.before.length]).toEqual([null, 2]);
  });
});
