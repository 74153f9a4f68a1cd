import fc from "fast-check";
import { afterAll, describe, expect, it } from "vitest";
import { mixStudy } from "#lib/cushioning/purchase/mix-study";
import { endSolver } from "../../../../app/solver/solve-in-worker";
import { exactMeans, plainMix, plainMixOffer, plainMixSupply, plainWay } from "./small-mix";

afterAll(endSolver);

const means = { ...exactMeans, supplyIds: ["bubble"], dearerShare: 0.2 };

describe("a study of paper or bubble", () => {
  it("tells what another roll is worth, what a fifth dearer does, and what sold out means, by hand", async () => {
    // 10 cups and 10 jugs, paper enough on hand; one roll of 50 sq ft at 900 may be bought, left over worth 10 a sq ft.
    // A cup on bubble saves 120 and takes 5 sq ft: 24 a sq ft. A jug saves 200 and takes 10: 20 a sq ft.
    // One roll packs the cups: saves 10 * 120 = 1200 for 900. Postage: 10 * 480 + 10 * 800 = 12800, with the roll 13700.
    // Another roll packs 5 jugs: saves 1000. At 1080 the roll still saves 120. Sold out: 13700 + 300 = 14000.
    const question = plainMix({
      supplies: [plainMixSupply("paper", { onHand: 1000 }), plainMixSupply("bubble", { leftMinor: 10 })],
      offers: [
        plainMixOffer("bubble", {
          unitsPerPack: 50,
          steps: [{ fromPacks: 1, priceMinor: 900 }],
          mostPacks: 1,
        }),
      ],
      types: [
        {
          id: "cup",
          parcels: 10,
          ways: [plainWay("paper", "paper", 6, 600), plainWay("bubble", "bubble", 5, 480)],
        },
        {
          id: "jug",
          parcels: 10,
          ways: [plainWay("paper", "paper", 9, 800), plainWay("bubble", "bubble", 10, 600)],
        },
      ],
    });
    const study = await mixStudy(question, means);
    expect(study.mixed.costs.totalMinor).toBeCloseTo(13_700, 5);
    expect(study.byStyle[0]?.plan.costs.totalMinor).toBeCloseTo(14_000, 5);
    // All bubble cannot be packed with one roll, so that it is the worse plan, however cheap what it packs is.
    expect(study.byStyle[1]?.plan.lack.parcels).toBeCloseTo(10, 5);
    const [roll] = study.anotherPacks;
    expect(roll).toMatchObject({ offerId: "bubble of north", supplyId: "bubble", units: 50 });
    expect(roll?.worthMinor).toBeCloseTo(1000, 5);
    expect(roll?.change.switched.map(({ typeId }) => typeId)).toEqual(["jug"]);
    expect(study.dearer?.moreMinor).toBeCloseTo(180, 5);
    expect(study.dearer?.switched).toEqual([]);
    expect(study.soldOut?.moreMinor).toBeCloseTo(300, 5);
    expect(study.soldOut?.switched.map(({ typeId }) => typeId)).toEqual(["cup"]);
  });

  it("has nothing to say of a supply without offers, and refuses one that the question does not have", async () => {
    const question = plainMix({
      supplies: [plainMixSupply("paper", { onHand: 10 }), plainMixSupply("bubble")],
      offers: [plainMixOffer("paper")],
      types: [{ id: "cup", parcels: 1, ways: [plainWay("paper", "paper", 6, 600)] }],
    });
    expect(await mixStudy(question, means)).toMatchObject({ anotherPacks: [], dearer: null, soldOut: null });
    await expect(mixStudy(question, { ...means, supplyIds: ["felt"] })).rejects.toThrow("got felt");
  });

  it("never finds another pack worth less than nothing, nor more than its price and delivery, nor a dearer or sold-out supply cheaper: with and without the solver", async () => {
    const drawn = fc.record({
      onHand: fc.integer({ min: 0, max: 30 }),
      price: fc.integer({ min: 300, max: 1500 }),
      delivery: fc.integer({ min: 0, max: 600 }),
      saves: fc.array(fc.integer({ min: 0, max: 300 }), { minLength: 3, maxLength: 3 }),
      leftMinor: fc.integer({ min: 0, max: 9 }),
      seconds: fc.constantFrom(0, 60),
    });
    await fc.assert(
      fc.asyncProperty(drawn, async ({ onHand, price, delivery, saves, leftMinor, seconds }) => {
        const question = plainMix({
          supplies: [
            plainMixSupply("paper", { onHand: 1000 }),
            plainMixSupply("bubble", { onHand, leftMinor }),
          ],
          suppliers: [{ id: "north", deliveryMinor: delivery, freeFromMinor: null, leastOrderMinor: null }],
          offers: [
            plainMixOffer("bubble", { unitsPerPack: 30, steps: [{ fromPacks: 1, priceMinor: price }] }),
          ],
          types: saves.map((save, index) => ({
            id: `type ${index}`,
            parcels: 3 + index,
            ways: [plainWay("paper", "paper", 6, 700), plainWay("bubble", "bubble", 4 + index, 700 - save)],
          })),
        });
        const { anotherPacks, dearer, soldOut } = await mixStudy(question, { ...means, seconds });
        const worth = anotherPacks[0]?.worthMinor ?? Number.NaN;
        expect(worth).toBeGreaterThanOrEqual(-1e-4);
        expect(worth).toBeLessThanOrEqual(price + delivery + 1e-4);
        expect(dearer?.moreMinor).toBeGreaterThanOrEqual(-1e-4);
        expect(soldOut?.moreMinor).toBeGreaterThanOrEqual(-1e-4);
      }),
      { numRuns: 40 },
    );
  });
});
