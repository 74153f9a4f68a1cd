import { describe, expect, it } from "vitest";
import { versionChanges } from "#app/recipes/[id]/changes/version-changes.ts";
import type { RecipeVersion } from "#lib/packing/recipe-version";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";

const step = (words: string, supplyId: string, units: number, per: "piece" | "parcel" = "piece") => ({
  id: words,
  position: 0,
  words,
  supplyId,
  amount: amountOfUnits(units),
  typedValue: String(units),
  typedUnit: "",
  per,
});
const version = (
  steps: RecipeVersion["steps"],
  cartons: RecipeVersion["cartons"] = [{ upTo: 1, supplyId: "cube-8" }],
): RecipeVersion => ({
  id: "v",
  itemTypeId: "mug",
  style: "paper",
  effectiveFrom: day("2026-01-01"),
  steps,
  cartons,
});
const supplyOf = (name: string) => ({ name, useUnit: "sheet" as const });
const changes = (before: RecipeVersion, now: RecipeVersion) => versionChanges(before, now, supplyOf);
const first = version([
  step("Fill it", "tissue", 0.5),
  step("Wrap it", "tissue", 0.5),
  step("Fill", "paper", 5, "parcel"),
]);

describe("what a version of a card changed", () => {
  it("is nothing where nothing did", () => {
    expect(changes(first, first)).toEqual([]);
  });

  it("tells amounts, both ways", () => {
    const now = version([
      step("Fill it", "tissue", 0.25),
      step("Wrap it", "tissue", 0.5),
      step("Fill", "paper", 6, "parcel"),
    ]);
    expect(changes(first, now)).toEqual([
      "Fill it: ¼ sheet less of tissue, ¼ sheet instead of ½ sheet.",
      "Fill: 1 sheet more of paper, 6 sheets instead of 5 sheets.",
    ]);
  });

  it("tells what came and what went", () => {
    const now = version([
      step("Wrap it", "tissue", 0.5),
      step("Pad the handle", "bubble", 1),
      step("Fill", "paper", 5, "parcel"),
    ]);
    expect(changes(first, now)).toEqual([
      "New: Pad the handle (bubble, 1 sheet).",
      "Left out: Fill it (tissue, ½ sheet).",
    ]);
  });

  it("knows a step that was only put in other words", () => {
    const now = version([
      step("Fill the hollow", "tissue", 0.5),
      step("Wrap it", "tissue", 0.5),
      step("Fill", "paper", 5, "parcel"),
    ]);
    expect(changes(first, now)).toEqual(["“Fill it” is now “Fill the hollow”."]);
  });

  it("tells of the cartons", () => {
    const now = version(first.steps, [
      { upTo: 1, supplyId: "cube-9" },
      { upTo: 2, supplyId: "cube-12" },
    ]);
    expect(changes(first, now)).toEqual([
      "Carton for one piece: cube-9 instead of cube-8.",
      "Carton for up to 2 pieces: cube-12.",
    ]);
    expect(changes(now, first)[1]).toBe("No carton for up to 2 pieces any more.");
  });
});
