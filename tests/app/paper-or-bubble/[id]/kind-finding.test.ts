import { describe, expect, it } from "vitest";
import { kindFinding } from "#app/paper-or-bubble/[id]/kind-finding.ts";
import type { WayCost } from "#lib/cushioning/way-cost";
import { plainCost } from "../../../lib/cushioning/small-ways";
import { DOLLARS } from "../../cartons/small-shelf";
import { kindOf } from "../small-answer";

const found = (...costs: readonly WayCost[]) => kindFinding("Framed tile", kindOf("tile", 1, costs), DOLLARS);

describe("which way to pack one kind of parcel is cheapest", () => {
  it("is named, and by how much it beats the next", () => {
    expect(found(plainCost("paper", 1_215), plainCost("bubble", 1_140))).toBe(
      "Framed tile: cheaper on bubble, by $0.75 a parcel.",
    );
    expect(found(plainCost("paper", 1_215), plainCost("bubble", 1_140), plainCost("mixed", 1_100))).toBe(
      "Framed tile: cheaper mixed, by $0.40 a parcel.",
    );
  });

  it("is none where both cost the same to the coin", () => {
    expect(found(plainCost("paper", 1_215.2), plainCost("bubble", 1_215))).toBe(
      "Framed tile: both ways cost the same.",
    );
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
