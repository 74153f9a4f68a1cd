import { describe, expect, it } from "vitest";
import { evidenceLeft, evidenceLife } from "#lib/packing/weight/evidence-life";
import type { WeighedParcel } from "#lib/packing/weight/weighed-parcel";
import { weightFit } from "#lib/packing/weight/weight-fit";
import { evenRandom } from "#lib/statistics/even-random";
import { normalDraw } from "#lib/statistics/normal-draw";
import { addDays, day } from "#lib/units/day";

function lifeOf(shareAt: (at: number) => number): number {
  const random = evenRandom(11);
  const parcels = Array.from(
    { length: 200 },
    (_, at): WeighedParcel => ({
      itemTypeId: "mug",
      cartonId: "cube-8",
      style: "paper",
      packedOn: addDays(day("2025-01-01"), 2 * at),
      predictedMg: 1_000_000,
      scaleMg: 1_000_000 * (1 + shareAt(at) + 0.03 * normalDraw(random)),
      unusual: false,
    }),
  );
  return evidenceLife(
    parcels,
    weightFit(
      parcels,
      parcels.map(() => 1),
    ),
  );
}

describe("life of evidence", () => {
  it("has no end where nothing moves", () => {
    expect(lifeOf(() => 0.05)).toBe(Number.POSITIVE_INFINITY);
  });

  it("is short where weights wander", () => {
    expect(lifeOf((at) => 0.1 * Math.sin(at / 25))).toBeLessThanOrEqual(90);
  });

  it("has no end without parcels", () => {
    expect(evidenceLife([], weightFit([], []))).toBe(Number.POSITIVE_INFINITY);
  });

  it("leaves a half after its days, all without an end, and never more than all", () => {
    expect(evidenceLeft(day("2026-01-01"), day("2026-01-31"), 30)).toBe(0.5);
    expect(evidenceLeft(day("2026-01-01"), day("2026-01-31"), Number.POSITIVE_INFINITY)).toBe(1);
    expect(evidenceLeft(day("2026-02-01"), day("2026-01-31"), 30)).toBe(1);
  });
});
