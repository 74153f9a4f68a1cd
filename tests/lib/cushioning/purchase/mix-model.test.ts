import { describe, expect, it } from "vitest";
import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import type { MixChoice } from "#lib/cushioning/purchase/mix-choice";
import { type MixGoal, mixModel, parcelsColumn, unpackedColumn } from "#lib/cushioning/purchase/mix-model";
import { mixStart } from "#lib/cushioning/purchase/mix-start";
import { brokenBy } from "../../purchasing/plan/whole-model";
import { plainMix, plainMixOffer, plainMixSupplier, plainMixSupply, plainWay, smallMix } from "./small-mix";

const question = plainMix({
  supplies: [plainMixSupply("paper", { onHand: 5, keep: 2, leftMinor: 3, litresPerUnit: 1 })],
  suppliers: [plainMixSupplier("north", { deliveryMinor: 200, leastOrderMinor: 150 })],
  offers: [plainMixOffer("paper", { unitsPerPack: 10, mostPacks: 2 })],
  types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 4, 500)] }],
  limits: { cashMinor: 500, litres: 30 },
});
const choice = (packs: number, parcels: number): MixChoice => ({
  lines: [{ offerId: "paper of north", packs }],
  split: [{ typeId: "cup", style: "paper", parcels }],
});
const whole: MixGoal = { kind: "cost", mostParcels: 0, mostShare: 0 };
const broken = (by: MixChoice, goal: MixGoal, of = question) => {
  const model = mixModel(of, goal);
  return brokenBy(model.model, mixStart(model, by));
};

describe("the model of a mix", () => {
  it("costs what the mix is costed at, in each goal, for greedy mixes of small questions", () => {
    for (let seed = 1; seed <= 60; seed++) {
      const small = checkedMix(smallMix(seed, 3)).question;
      const greedy = greedyMix(small);
      const { lack, costs } = costedMix(small, greedy);
      const goal: MixGoal = { kind: "cost", mostParcels: lack.parcels, mostShare: lack.share };
      expect(broken(greedy, goal, small).broken).toEqual([]);
      expect(broken(greedy, goal, small).cost).toBeCloseTo(costs.totalMinor, 5);
      expect(broken(greedy, { kind: "parcels" }, small).cost).toBeCloseTo(lack.parcels, 6);
      expect(broken(greedy, { kind: "share", mostParcels: lack.parcels }, small).cost).toBeCloseTo(
        lack.share,
        5,
      );
      const weighed: MixGoal = { kind: "weighed", weights: { parcel: 7000, share: 500 } };
      const sum = costs.totalMinor + 7000 * lack.parcels + 500 * lack.share;
      expect(Math.abs(broken(greedy, weighed, small).cost - sum)).toBeLessThan(0.01);
    }
  });

  it("is broken by what breaks the question", () => {
    expect(broken(choice(2, 4), whole).broken).toEqual([]);
    const rows = (changes: Partial<typeof question>) =>
      broken(choice(2, 4), whole, { ...question, ...changes }).broken;
    expect(rows({ limits: { cashMinor: 399, litres: null } })).toEqual(["cash"]);
    expect(rows({ limits: { cashMinor: null, litres: 24 } })).toEqual(["room"]);
    expect(rows({ suppliers: [plainMixSupplier("north", { leastOrderMinor: 201 })] })).toEqual(["least"]);
    expect(broken(choice(1, 4), { kind: "parcels" }).broken).toEqual(
      expect.arrayContaining(["left", "least"]),
    );
  });

  it("asks for every parcel and all that is to be kept, unless some may be left undone", () => {
    expect(broken(choice(2, 3.5), whole).broken).toEqual(["parcels"]);
    expect(broken(choice(2, 3.5), { ...whole, mostParcels: 0.5 }).broken).toEqual([]);
    expect(broken(choice(2, 3.5), { ...whole, mostParcels: 0.4 }).broken).toEqual(["unpacked"]);
    const more = { ...question, supplies: question.supplies.map((each) => ({ ...each, keep: 18 })) };
    expect(broken(choice(2, 4), whole, more).broken).toEqual(["keep"]);
    expect(broken(choice(2, 4), { ...whole, mostShare: 0.5 }, more).broken).toEqual([]);
    expect(broken(choice(2, 4), { ...whole, mostShare: 0.49 }, more).broken).toEqual(["below"]);
  });

  it("has no columns for what may not be left undone", () => {
    const names = (goal: MixGoal) => mixModel(question, goal).model.columns.map(({ name }) => name);
    expect(names(whole)).toContain(parcelsColumn(0, 0));
    expect(names(whole)).not.toContain(unpackedColumn(0));
    expect(names({ kind: "parcels" })).toContain(unpackedColumn(0));
  });
});
