import { describe, expect, it } from "vitest";
import type { WeighedParcel } from "#lib/packing/weight/weighed-parcel";
import { weightDrift } from "#lib/packing/weight/weight-drift";
import { evenRandom } from "#lib/statistics/even-random";
import { normalDraw } from "#lib/statistics/normal-draw";
import { addDays, day, daysBetween } from "#lib/units/day";

const first = day("2026-01-01");

function parcels(count: number, shareAt: (at: number) => number): WeighedParcel[] {
  const random = evenRandom(21);
  return Array.from({ length: count }, (_, at) => ({
    itemTypeId: "mug",
    cartonId: "cube-8",
    style: "paper",
    packedOn: addDays(first, at),
    predictedMg: 1_000_000,
    scaleMg: Math.round(1_000_000 * (1 + shareAt(at) + 0.03 * normalDraw(random))),
    unusual: false,
  }));
}

describe("weight drift", () => {
  it("tells since when and by how much parcels weigh more", () => {
    const drift = weightDrift(parcels(120, (at) => (at < 80 ? 0 : 0.08)));
    expect(Math.abs(daysBetween(addDays(first, 80), drift?.since ?? first))).toBeLessThanOrEqual(3);
    expect(drift?.share).toBeCloseTo(0.08, 1);
    expect(drift?.before).toBeCloseTo(0, 1);
  });

  it("tells of the last of two changes", () => {
    const drift = weightDrift(parcels(200, (at) => [0, 0.1, -0.08][Math.floor(at / 70)] ?? 0));
    expect(Math.abs(daysBetween(addDays(first, 140), drift?.since ?? first))).toBeLessThanOrEqual(3);
    expect(drift?.share).toBeLessThan(-0.05);
  });

  it("tells where parcels weighed more from the start", () => {
    const drift = weightDrift(parcels(40, () => 0.07));
    expect(drift).toMatchObject({ since: first, before: null, parcels: 40 });
  });

  it("says nothing where the bill is right, where it is right again, or of a single far-off parcel", () => {
    expect(weightDrift(parcels(150, () => 0))).toBeNull();
    expect(weightDrift(parcels(160, (at) => (at < 80 ? 0.1 : 0)))).toBeNull();
    expect(weightDrift(parcels(60, (at) => (at === 40 ? 0.9 : 0)))).toBeNull();
  });

  it("says nothing of five parcels", () => {
    expect(weightDrift(parcels(5, () => 0.3))).toBeNull();
  });
});
