import { describe, expect, it } from "vitest";
import { brokenFinding } from "#app/parcels/broken/broken-finding.ts";
import { luckWords } from "#app/parcels/broken/luck-words.ts";
import { brokenInCommon } from "#lib/packing/breakage/broken-in-common";

const style = (value: string, parcels: number, broken: number) => ({
  trait: "style" as const,
  value,
  parcels,
  broken,
});

describe("what broke, in words", () => {
  it("names what stands out, with how rarely luck does so much", () => {
    const [common] = brokenInCommon([style("bubble", 20, 6), style("paper", 200, 1)], {
      parcels: 220,
      broken: 7,
    });
    if (common === undefined) throw new TypeError("bubble has broken parcels");
    expect(brokenFinding({ parcels: 220, broken: 7 }, { common, name: "on bubble" })).toBe(
      "Seven of 220 parcels arrived broken; on bubble stands out.",
    );
    expect(luckWords(common)).toMatch(
      /^6 of 20, against 1 of 200 without; truly between 14 and 51 %, 9 times in 10\. Luck does so much less than once in \d+ such tables\.$/,
    );
  });

  it("claims nothing of few broken parcels, or of what luck does too", () => {
    const all = { parcels: 60, broken: 2 };
    const [few] = brokenInCommon([style("bubble", 20, 2)], all);
    if (few === undefined) throw new TypeError("bubble has broken parcels");
    expect(brokenFinding(all, { common: few, name: "on bubble" })).toBe(
      "Two of 60 parcels arrived broken: too few to say what they have in common.",
    );
    const [luck] = brokenInCommon([style("bubble", 30, 2)], { parcels: 60, broken: 4 });
    if (luck === undefined) throw new TypeError("bubble has broken parcels");
    expect(brokenFinding({ parcels: 60, broken: 4 }, { common: luck, name: "on bubble" })).toContain(
      "nothing that they have in common is more than luck could do",
    );
    expect(luckWords(luck)).not.toContain("Luck does");
  });

  it("says so where nothing broke", () => {
    expect(brokenFinding({ parcels: 0, broken: 0 }, null)).toBe("No parcels yet, so nothing broke.");
    expect(brokenFinding({ parcels: 9, broken: 0 }, null)).toBe("None of 9 parcels arrived broken.");
  });
});
