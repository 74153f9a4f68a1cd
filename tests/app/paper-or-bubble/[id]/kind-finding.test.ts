import { describe, expect, it } from "vitest";
import { kindFinding } from "#app/paper-or-bubble/[id]/kind-finding.ts";
import type { WayCost } from "#lib/cushioning/way-cost";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { plainCost } from "../../../lib/cushioning/small-ways";
import { DOLLARS } from "../../cartons/small-shelf";
import { kindOf } from "../small-answer";

const sent = (style: CushionStyle, totalMinor: number) =>
  plainCost(style, totalMinor, {}, { postageMinor: 500 });
const found = (...costs: readonly WayCost[]) => kindFinding("Framed tile", kindOf("tile", 1, costs), DOLLARS);

describe("which way to pack one kind of parcel is cheapest", () => {
  it("is named, and by how much it beats the next", () => {
    expect(found(sent("paper", 1_215), sent("bubble", 1_140))).toBe(
      "Framed tile: cheaper on bubble, by $0.75 a parcel.",
    );
    expect(found(sent("paper", 1_215), sent("bubble", 1_140), sent("mixed", 1_100))).toBe(
      "Framed tile: cheaper mixed, by $0.40 a parcel.",
    );
  });

  it("is none where both cost the same to the coin", () => {
    expect(found(sent("paper", 1_215.2), sent("bubble", 1_215))).toBe(
      "Framed tile: both ways cost the same.",
    );
  });

  it("says that postage is left out where it is not known for any way", () => {
    expect(found(plainCost("paper", 215), plainCost("bubble", 290))).toBe(
      "Framed tile: cheaper on paper, by $0.75 a parcel, postage left out.",
    );
    expect(found(plainCost("paper", 215), plainCost("bubble", 215))).toMatch(/the same, postage left out\.$/);
  });

  it("is none where the postage of one way is not known, though its sum is less for it", () => {
    const weighed = plainCost("bubble", 1_140, {}, { postageMinor: 900 });
    expect(found(plainCost("paper", 240), weighed)).toBe(
      "Framed tile: its postage on paper is not known, so nothing to compare yet.",
    );
    expect(found(weighed, plainCost("mixed", 1_300))).toMatch(/its postage mixed is not known/);
  });

  it("is that there is nothing to compare", () => {
    expect(found()).toBe("Framed tile: there is no card to reckon by.");
    expect(found(plainCost("paper", 1_215))).toBe("Framed tile: one card, nothing to compare.");
  });
});
