import { describe, expect, it } from "vitest";
import { HABIT_SOURCES, USUAL_HABITS } from "#lib/packing/habits";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

describe("the usual habits", () => {
  it("each name their source", () => {
    expect(Object.keys(HABIT_SOURCES).sort()).toEqual(Object.keys(USUAL_HABITS).sort());
    expect(Object.values(HABIT_SOURCES).filter((source) => source.length < 10)).toEqual([]);
  });

  // From memory: 52 cu in firm and 86 loose to a sheet of 24 x 36 in, 65 to a square foot of large bubble.
  it("let a sheet of packing paper fill 52 cubic inches firm and 86 loose, and a square foot of bubble 65", () => {
    const inches = (um: number | undefined) => (um ?? 0) / MICROMETRES_PER_INCH;
    expect(inches(USUAL_HABITS.bulkUm.firm["packing-paper"]) * 24 * 36).toBeCloseTo(52, 9);
    expect(inches(USUAL_HABITS.bulkUm.loose["packing-paper"]) * 24 * 36).toBeCloseTo(86, 9);
    expect(inches(USUAL_HABITS.bulkUm.firm["large-bubble"]) * 144).toBeCloseTo(65, 9);
  });

  it("ask for more cushion the frailer a piece is", () => {
    const { sturdy, usual, thin } = USUAL_HABITS.cushionUm;
    expect(sturdy < usual && usual < thin).toBe(true);
  });

  it("fill no less with a sheet that lies loose", () => {
    const { firm, loose } = USUAL_HABITS.bulkUm;
    expect(Object.keys(loose)).toEqual(Object.keys(firm));
    expect((loose.tissue ?? 0) > (firm.tissue ?? 0)).toBe(true);
  });
});
