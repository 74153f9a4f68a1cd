import { describe, expect, it } from "vitest";
import { stepRows } from "#app/paper-or-bubble/[id]/step-rows.ts";
import { wayCost } from "#lib/cushioning/way-cost";
import { BUBBLE, bell, GRAM, PAPER, POUND, TERMS } from "../../../lib/cushioning/small-ways";
import { DOLLARS } from "../../cartons/small-shelf";

const [paper, bubble] = [PAPER, BUBBLE].map((way) => wayCost(way, TERMS, null));
if (paper === undefined || bubble === undefined) throw new RangeError("two ways were costed");

describe("the chance of each postage step", () => {
  it("is told in each way with what it costs on average, lightest first", () => {
    // Under 2 lb 0.1587 of the parcels on paper, 0.9772 on bubble (normal table); 3/4 near, 1/4 far.
    expect(stepRows([paper, bubble], DOLLARS)).toEqual([
      { name: "up to 2 lb", cells: ["16 in 100, $8.25", "98 in 100, $8.25"] },
      { name: "up to 3 lb", cells: ["84 in 100, $10.75", "2 in 100, $10.75"] },
    ]);
  });

  it("is hardly any for a step that only the other way pays", () => {
    const heavy = wayCost({ ...PAPER, weight: bell(3.5 * POUND) }, TERMS, null);
    expect(stepRows([heavy, bubble], DOLLARS).map(({ name, cells }) => [name, ...cells])).toEqual([
      ["up to 2 lb", "hardly any", "98 in 100, $8.25"],
      ["up to 3 lb", "hardly any", "2 in 100, $10.75"],
      ["up to 4 lb", "nearly all, $13.25", "hardly any"],
    ]);
  });

  it("tells further units beyond the card's last step", () => {
    const heavy = wayCost({ ...PAPER, weight: bell(5 * POUND - 200 * GRAM) }, TERMS, null);
    expect(stepRows([heavy], DOLLARS)).toEqual([{ name: "up to 5 lb", cells: ["nearly all, $15.75"] }]);
  });

  it("is not known of a way without postage", () => {
    const unweighed = wayCost({ ...PAPER, weight: null }, TERMS, null);
    expect(stepRows([unweighed], DOLLARS)).toEqual([]);
    expect(stepRows([unweighed, bubble], DOLLARS)[0]?.cells).toEqual(["not known", "98 in 100, $8.25"]);
  });
});
