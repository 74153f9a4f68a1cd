import { describe, expect, it } from "vitest";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { likelyUnitSlip } from "#lib/packing/weight/likely-unit-slip";
import { packedWeight } from "#lib/packing/weight/packed-weight";
import { day } from "#lib/units/day";

const LB = 453_592.37;
const weight = packedWeight(learnedWeights([], day("2026-11-25")).known, {
  itemTypeId: "mug",
  cartonId: "cube-8",
  style: "paper",
  predictedMg: 650_000,
});

describe("likely unit slip", () => {
  it("asks whether 23 lb are 23 oz", () => {
    expect(likelyUnitSlip({ mg: 23 * LB, unit: "lb" }, weight)).toMatchObject({ typed: "lb", meant: "oz" });
  });

  it("asks whether 0.65 g are 0.65 kg", () => {
    expect(likelyUnitSlip({ mg: 650, unit: "g" }, weight)?.meant).toBe("kg");
  });

  it("does not ask about a usual weight, nor about one that fits in no unit", () => {
    expect(likelyUnitSlip({ mg: 700_000, unit: "g" }, weight)).toBeNull();
    expect(likelyUnitSlip({ mg: 2_600_000, unit: "g" }, weight)).toBeNull();
  });
});
