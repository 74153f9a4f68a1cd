import { describe, expect, it } from "vitest";
import { weightWords } from "#app/parcels/costs/weight-words.ts";
import { day } from "#lib/units/day";

const drift = { since: day("2026-10-03"), share: 0.041, before: 0.003, parcels: 23 };
const group = { itemTypeId: "mug", cartonId: "cube-8", style: "paper" as const };
const nameOf = (id: string) => ({ mug: "Mug", "cube-8": "Carton 8 × 8 × 8" })[id] ?? id;

describe("weights that moved, in words", () => {
  it("say since when, how far, by how many parcels and how it was before", () => {
    expect(weightWords({ ...group, drift }, nameOf)).toBe(
      "Mug on paper in Carton 8 × 8 × 8: since 3 Oct 2026 4 % more than the bill, by 23 parcels, before that as the bill says.",
    );
  });

  it("leave out what was not before, and a carton of no list", () => {
    const always = { ...group, cartonId: null, drift: { ...drift, share: -0.1, before: null } };
    expect(weightWords(always, nameOf)).toBe(
      "Mug on paper: since 3 Oct 2026 10 % less than the bill, by 23 parcels.",
    );
  });
});
