import { describe, expect, it } from "vitest";
import { movedWeights } from "#lib/packing/weight/moved-weights";
import { addDays, day } from "#lib/units/day";

const start = day("2026-01-01");
const mug = { itemTypeId: "mug", cartonId: "cube-8", style: "paper" as const, unusual: false };

/** Thirty parcels of a group, a day apart, the last half heavier by a share of the bill. */
function parcels(group: typeof mug, rise: number) {
  return Array.from({ length: 30 }, (_, at) => ({
    ...group,
    packedOn: addDays(start, at),
    predictedMg: 900_000,
    scaleMg: Math.round(900_000 * (1 + 0.004 * Math.sin(5 * at) + (at < 15 ? 0 : rise))),
  }));
}

describe("parcels that weigh otherwise than their bills", () => {
  it("are told by group with the day since when, the farthest off first", () => {
    const bowl = { ...mug, itemTypeId: "bowl" };
    const { moved, aside } = movedWeights([
      ...parcels(mug, 0.06),
      ...parcels(bowl, -0.12),
      ...parcels({ ...mug, cartonId: "cube-12" }, 0),
    ]);
    expect(moved.map(({ itemTypeId }) => itemTypeId)).toEqual(["bowl", "mug"]);
    expect(moved[1]).toMatchObject({ cartonId: "cube-8", drift: { since: "2026-01-16", parcels: 15 } });
    expect(moved[1]?.drift.share).toBeCloseTo(0.06, 2);
    expect(aside).toBe(0);
  });

  it("are not told by a reading in the wrong unit, which is counted apart", () => {
    const own = parcels(mug, 0).map((parcel, at) =>
      at === 20 ? { ...parcel, scaleMg: 16 * 900_000 } : parcel,
    );
    expect(movedWeights(own)).toEqual({ moved: [], aside: 1 });
  });
});
