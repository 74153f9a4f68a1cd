import { describe, expect, it } from "vitest";
import { finishedRolls } from "#lib/packing/calibration/finished-rolls";
import { inches } from "../bench-shop";

const roll = inches(110 * 36);

describe("finishedRolls", () => {
  it("finds that 26 cartons of 75 in from a roll of 110 yd took twice the theory", () => {
    const factor = finishedRolls({ rolls: 1, rollUm: roll, theoryUm: inches(26 * 75) });
    expect(factor.kind).toBe("plausible");
    expect(factor.value).toBeCloseTo(2.03, 2);
  });

  // A moving firm's page: one roll for 8 to 10 boxes. Computed with 75 in a box: 4.4 to 6.6 times theory.
  it("still believes what movers use", () => {
    const of = (cartons: number) => finishedRolls({ rolls: 1, rollUm: roll, theoryUm: inches(cartons * 75) });
    expect([of(8).kind, of(10).kind]).toEqual(["plausible", "plausible"]);
  });

  it("doubts less tape than theory, and a roll for three cartons", () => {
    const of = (cartons: number) => finishedRolls({ rolls: 1, rollUm: roll, theoryUm: inches(cartons * 75) });
    expect([of(100).kind, of(3).kind]).toEqual(["doubtful", "doubtful"]);
  });

  it("refuses part of a roll", () => {
    expect(() => finishedRolls({ rolls: 0.5, rollUm: roll, theoryUm: 1 })).toThrow(RangeError);
  });
});
