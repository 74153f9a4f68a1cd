import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { countedFill } from "#lib/packing/calibration/counted-fill";
import { fillAmount } from "#lib/packing/fill/fill-amount";
import { USUAL_HABITS } from "#lib/packing/habits";
import { unitArea } from "#lib/packing/unit-area";
import { unitsOf } from "#lib/units/amount";
import { inches, paper } from "../bench-shop";

const cube12 = { lengthUm: inches(12), widthUm: inches(12), heightUm: inches(12) };
const usual = USUAL_HABITS.bulkUm.firm["packing-paper"] ?? 0;
const area = unitArea(paper) ?? 0;

describe("countedFill", () => {
  // Computed: 1728 cu in / 52.
  it("finds the usual bulk again from 33.2 sheets in a 12 in cube", () => {
    const counted = countedFill({ inside: cube12, units: 1728 / 52, unitArea: area }, usual);
    expect(counted.kind).toBe("plausible");
    expect(counted.value).toBeCloseTo(usual, 6);
  });

  it("doubts six sheets in a 12 in cube", () => {
    expect(countedFill({ inside: cube12, units: 6, unitArea: area }, usual)).toMatchObject({
      kind: "doubtful",
    });
  });

  it("leads back to the sheets that were counted", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), (sheets) => {
        const { value } = countedFill({ inside: cube12, units: sheets, unitArea: area }, usual);
        const fill = fillAmount(1728 * 16.387064, { ...paper, bulkUm: value }, USUAL_HABITS, "firm");
        expect(fill.kind === "fill" && unitsOf(fill.theory)).toBeCloseTo(sheets, 3);
      }),
    );
  });

  it("refuses no sheets", () => {
    expect(() => countedFill({ inside: cube12, units: 0, unitArea: area }, usual)).toThrow(RangeError);
  });
});
