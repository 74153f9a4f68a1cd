import { describe, expect, it } from "vitest";
import { massWords } from "#app/recipes/mass-words.ts";
import { milligrams } from "#lib/units/mass";

describe("what something weighs, in words", () => {
  it("does not call part of it the whole", () => {
    expect(massWords({ mg: milligrams(797_000), unknown: [] }, "metric")).toBe("797 g");
    expect(massWords({ mg: milligrams(427_000), unknown: ["mug"] }, "metric")).toBe("at least 427 g");
    expect(massWords({ mg: milligrams(0), unknown: ["mug"] }, "metric")).toBe("not known yet");
  });
});
