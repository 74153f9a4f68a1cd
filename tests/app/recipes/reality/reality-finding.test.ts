import { describe, expect, it } from "vitest";
import { realityFinding } from "#app/recipes/reality/reality-finding.ts";

describe("the finding of card against reality", () => {
  it("says what is asked, or that nothing is", () => {
    expect(realityFinding(0, 0, 0)).toContain("counted twice");
    expect(realityFinding(3, 0, 0)).toBe("The counts do not speak against any card.");
    expect(realityFinding(3, 0, 2)).toBe("What the counts said is answered for now.");
    expect(realityFinding(3, 1, 2)).toContain("a card is off");
    expect(realityFinding(3, 2, 0)).toContain("2 amounts");
  });
});
