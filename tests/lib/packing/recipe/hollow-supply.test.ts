import { describe, expect, it } from "vitest";
import { USUAL_HABITS } from "#lib/packing/habits";
import { hollowSupply } from "#lib/packing/recipe/hollow-supply";
import { largeBubble, mug, paper, tissue } from "../bench-shop";

const vase = { ...mug, hollows: [{ kind: "volume", ml: 2000 } as const] };

// Common practice, no source.
describe("hollowSupply", () => {
  it("fills a mug with tissue and a vase with the paper for the carton", () => {
    expect(hollowSupply(mug, { hollow: tissue, fill: paper }, USUAL_HABITS)).toBe(tissue);
    expect(hollowSupply(vase, { hollow: tissue, fill: paper }, USUAL_HABITS)).toBe(paper);
  });

  it("stays with what was chosen where the carton is filled with bubble, or the choice was no tissue", () => {
    expect(hollowSupply(vase, { hollow: tissue, fill: largeBubble }, USUAL_HABITS)).toBe(tissue);
    expect(hollowSupply(vase, { hollow: paper, fill: paper }, USUAL_HABITS)).toBe(paper);
    expect(hollowSupply(vase, { hollow: null, fill: paper }, USUAL_HABITS)).toBeNull();
  });

  it("follows the shop's own limit", () => {
    const habits = { ...USUAL_HABITS, hollowTissue: 99 };
    expect(hollowSupply(vase, { hollow: tissue, fill: paper }, habits)).toBe(tissue);
  });
});
