import { describe, expect, it } from "vitest";
import { MATERIAL_WORDS, unplacedStep } from "#lib/packing/recipe/drafted-step";
import { amountFraction } from "#lib/units/amount";
import { parseAmount } from "#lib/units/amount-text";
import { paper, tissue } from "../bench-shop";

describe("unplacedStep", () => {
  const step = {
    job: "surface",
    words: "Wrap in tissue",
    supply: tissue,
    amount: amountFraction(4, 3),
    per: "piece",
    theory: "16 × 9 in",
    reason: "…",
  } as const;

  it("types the amount as a person would, so that it reads back the same", () => {
    const { typedValue, typedUnit, used, amount } = unplacedStep(step);
    expect([typedValue, typedUnit, used]).toEqual(["1⅓", "sheets", "1⅓ sheets"]);
    expect(parseAmount(`${typedValue} ${typedUnit}`, "sheet", "imperial")).toMatchObject({ amount });
  });

  it("is a guess until the supply was measured", () => {
    expect(unplacedStep(step).guessed).toBe(true);
    expect(unplacedStep({ ...step, supply: { ...paper, measured: true } }).guessed).toBe(false);
  });

  it("leaves the unit empty for what is counted by itself", () => {
    const each = unplacedStep({ ...step, supply: { ...tissue, useUnit: "each" } });
    expect([each.typedValue, each.typedUnit]).toEqual(["1⅓", ""]);
  });

  it("has a word for every material", () => {
    expect(Object.values(MATERIAL_WORDS).filter((word) => word === "")).toEqual([]);
    expect(MATERIAL_WORDS["small-bubble"]).toBe("bubble");
  });
});
