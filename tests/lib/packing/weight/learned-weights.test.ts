import { describe, expect, it } from "vitest";
import { beliefAt } from "#lib/packing/weight/known-weights";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { type PastParcel, weightGroupKey } from "#lib/packing/weight/weighed-parcel";
import { addDays, day } from "#lib/units/day";

const today = day("2026-11-25");
const mug: PastParcel = {
  itemTypeId: "mug",
  cartonId: "cube-8",
  style: "paper",
  packedOn: day("2026-11-01"),
  predictedMg: 937000,
  scaleMg: 985000,
  unusual: false,
};

describe("learned weights", () => {
  it("rest on nothing without parcels", () => {
    const learned = learnedWeights([], today);
    expect(learned.known.shop.parcels).toBe(0);
    expect(learned.halfLifeDays).toBeNull();
  });

  it("count what was learned from, by group and by item type", () => {
    const learned = learnedWeights(
      [
        mug,
        { ...mug, cartonId: "cube-12" },
        { ...mug, unusual: true },
        { ...mug, scaleMg: null },
        { ...mug, scaleMg: 16 * 985000 },
      ],
      today,
    );
    expect(learned.known.groups[weightGroupKey(mug)]?.parcels).toBe(1);
    expect(learned.known.types["mug"]?.parcels).toBe(2);
    expect(learned.aside.map(({ slip }) => slip.meant)).toEqual(["oz"]);
  });

  it("take the latest 150 of a group, and all of one that is packed rarely", () => {
    const many = Array.from({ length: 200 }, (_, at) => ({
      ...mug,
      packedOn: addDays(today, at - 200),
      scaleMg: (at < 50 ? 1200000 : 980000) + 3000 * (at % 7),
    }));
    const rare = { ...mug, cartonId: "cube-12", packedOn: addDays(today, -700) };
    const learned = learnedWeights([...many, rare], today);
    expect(Object.values(learned.known.groups).map(({ parcels }) => parcels)).toEqual([1, 150]);
    const { mean } = beliefAt(learned.known, { ...mug, predictedMg: 937_000 });
    expect(937000 * (1 + mean)).toBeCloseTo(989000, -4);
  });

  it("do not depend on the order in which parcels are given", () => {
    const parcels = Array.from({ length: 12 }, (_, at) => ({
      ...mug,
      packedOn: addDays(mug.packedOn, at),
      scaleMg: 950000 + 7000 * ((at * 5) % 12),
    }));
    const next = { ...mug, predictedMg: 937_000 };
    const forth = beliefAt(learnedWeights(parcels, today).known, next);
    const back = beliefAt(learnedWeights([...parcels].reverse(), today).known, next);
    expect(back.mean).toBeCloseTo(forth.mean, 9);
    expect(back.variance).toBeCloseTo(forth.variance, 9);
  });

  it("follow weights that move", () => {
    const parcels = Array.from({ length: 120 }, (_, at) => ({
      ...mug,
      packedOn: addDays(today, 2 * (at - 120)),
      scaleMg: Math.round(937000 * (1 + 0.002 * at + 0.01 * Math.sin(7 * at))),
    }));
    const learned = learnedWeights(parcels, today);
    const { mean } = beliefAt(learned.known, { ...mug, predictedMg: 937_000 });
    expect(learned.halfLifeDays).not.toBeNull();
    expect(mean).toBeGreaterThan(0.18);
  });
});
