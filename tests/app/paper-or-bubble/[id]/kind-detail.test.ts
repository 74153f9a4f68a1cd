import { describe, expect, it } from "vitest";
import { kindDetail } from "#app/paper-or-bubble/[id]/kind-detail.ts";
import { cushionAnswer } from "#app/paper-or-bubble/cushion-answer.ts";
import type { CushionGround } from "#app/paper-or-bubble/cushion-ground.ts";
import { GRAM } from "../../../lib/cushioning/small-ways";
import { groundOf, groundWith } from "../small-answer";

const mugs = (pieces: number) => [{ itemTypeId: "mug", pieces }];

function detailOf(pieces: ReturnType<typeof mugs>, ground: CushionGround = groundOf()) {
  return kindDetail(pieces, ground, cushionAnswer(ground, { prices: new Map(), cardId: null }));
}

describe("one kind of parcel", () => {
  it("is the one among those to come, however its pieces were read", () => {
    // As the records read them: the count first.
    const sent = [
      { pieces: [{ pieces: 2, itemTypeId: "mug" }], style: "paper" as const, zoneId: "near", parcels: 5 },
    ];
    const { kind } = detailOf(mugs(2), groundOf({ sent }));
    // 40 mugs expected, two a parcel
    expect(kind.parcels).toBe(20);
    expect(kind.costs.map(({ way }) => way.style)).toEqual(["paper", "bubble"]);
  });

  it("is reckoned anew where none like it is to come", () => {
    const { kind, bareMg } = detailOf(mugs(3));
    expect(kind.parcels).toBe(0);
    expect(kind.comparisons).toHaveLength(1);
    expect(bareMg).toBe(3 * 370 * GRAM);
  });

  it("is followed from a third of its weight to twice it, and at least 700 g to both sides", () => {
    const { overWeight } = detailOf(mugs(6));
    // 2,220 g: down to 740 g, up to 4,440 g
    expect(overWeight?.points[0]?.bareMg).toBeCloseTo(740 * GRAM, 3);
    expect(overWeight?.points.at(-1)?.bareMg).toBe(4_440 * GRAM);
    expect(overWeight?.points.length).toBeGreaterThan(40);
    // One mug of 370 g: down to 10 g, up to 1,070 g
    const one = detailOf(mugs(1)).overWeight;
    expect(one?.points[0]?.bareMg).toBe(10 * GRAM);
    expect(one?.points.at(-1)?.bareMg).toBe(1_070 * GRAM);
  });

  it("costs at its own weight what the kind costs", () => {
    const sixth = detailOf(mugs(6));
    // The nearest point to 2,220 g is half a gap away at most.
    const [paper] = sixth.kind.costs;
    const near = sixth.overWeight?.points.reduce((best, each) =>
      Math.abs(each.bareMg - 2_220 * GRAM) < Math.abs(best.bareMg - 2_220 * GRAM) ? each : best,
    );
    expect(Math.abs((near?.bareMg ?? Number.NaN) - 2_220 * GRAM)).toBeLessThan(40 * GRAM);
    expect(
      Math.abs((near?.totals.get("paper") ?? Number.NaN) / (paper?.totalMinor ?? Number.NaN) - 1),
    ).toBeLessThan(0.02);
  });

  it("is not followed where a piece or a supply was never weighed, or no card holds", () => {
    const unweighed = detailOf(mugs(1), groundWith({ pieceMasses: new Map() }));
    expect(unweighed).toMatchObject({ overWeight: null, bareMg: null });
    const { supplyMasses } = groundOf().packing;
    const noFilm = groundWith({ supplyMasses: new Map([...supplyMasses, ["bubble", null] as const]) });
    expect(detailOf(mugs(1), noFilm)).toMatchObject({ overWeight: null, bareMg: null });
    expect(detailOf(mugs(1), groundOf({ cards: [] }))).toMatchObject({
      overWeight: null,
      bareMg: 370 * GRAM,
    });
  });

  it("is nothing without a recipe", () => {
    const none = detailOf([{ itemTypeId: "vase", pieces: 1 }]);
    expect(none).toMatchObject({ overWeight: null, bareMg: null, kind: { costs: [], comparisons: [] } });
  });
});
