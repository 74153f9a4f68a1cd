import { describe, expect, it } from "vitest";
import { readWhatIf } from "#app/outlook/what-if-form.ts";
import { percentChoices, whatIfWords } from "#app/outlook/what-if-words.ts";
import type { CushionStyle } from "#lib/packing/recipe-version";

const RECIPES: ReadonlyMap<string, ReadonlySet<CushionStyle>> = new Map([["mug", new Set(["paper"])]]);

describe("a what-if in the address", () => {
  it("is none without its first parameter", () => {
    expect(readWhatIf({}, RECIPES)).toEqual({ kind: "none" });
    expect(readWhatIf({ today: "2026-11-25" }, RECIPES)).toEqual({ kind: "none" });
  });

  it("is read with and without a recipe", () => {
    expect(readWhatIf({ parcels: "20", type: "", style: "bubble" }, RECIPES)).toEqual({
      kind: "change",
      change: { parcelsPercent: 20, recipe: null },
    });
    expect(readWhatIf({ parcels: "-50", type: "mug", style: "paper" }, RECIPES)).toEqual({
      kind: "change",
      change: { parcelsPercent: -50, recipe: { itemTypeId: "mug", style: "paper" } },
    });
  });

  it("names the part that can't be read and the way out", () => {
    const fields = [
      { parcels: "many" },
      { parcels: "" },
      { parcels: "20.5" },
      { parcels: "1000" },
      { parcels: ["20", "30"] },
      { parcels: "20", type: "lamp" },
      { parcels: "20", type: "mug", style: "straw" },
      { parcels: "20", type: "mug", style: "bubble" },
    ].map((query) => readWhatIf(query, RECIPES));
    expect(fields.map((read) => (read.kind === "unreadable" ? read.title : read.kind))).toEqual([
      "How many more parcels can't be read from the address.",
      "How many more parcels can't be read from the address.",
      "How many more parcels can't be read from the address.",
      "How many more parcels can't be read from the address.",
      "How many more parcels can't be read from the address.",
      "The item type asked for has no recipe.",
      "The item type has no recipe in that cushion style.",
      "The item type has no recipe in that cushion style.",
    ]);
  });
});

describe("the answer of a what-if", () => {
  const words = (now: number, then: number) =>
    whatIfWords({ mean: now }, { mean: then }, { weeks: 4, unit: "sheet" });

  it("holds the figures against each other as they are shown", () => {
    expect(words(1224, 1276)).toBe(
      "About 1,280 sheets in the next 4 weeks instead of 1,220 sheets: 60 sheets more.",
    );
    expect(words(100, 50)).toContain("50 sheets less");
  });

  it("says where nothing would change", () => {
    expect(words(100, 100.2)).toBe(
      "It would change nothing: about 100 sheets in the next 4 weeks, as before.",
    );
  });

  it("offers the percentage that was asked among the others", () => {
    expect(percentChoices(35).map(({ value }) => value)).toEqual([
      "-50",
      "-20",
      "-10",
      "0",
      "10",
      "20",
      "35",
      "50",
      "100",
    ]);
    expect(percentChoices(null).map(({ words: said }) => said)).toContain("half as many");
  });
});
