import { describe, expect, it } from "vitest";
import { upliftWords } from "#app/outlook/events/uplift-words.ts";

describe("uplift in words", () => {
  it.each([
    [50, "half as much again"],
    [100, "twice as much"],
    [-100, "nothing at all"],
    [0, "as much as usual"],
    [35, "+35 %"],
    [900, "+900 %"],
    [-20, "−20 %"],
  ])("says %i percent as “%s”", (percent, words) => {
    expect(upliftWords(percent)).toBe(words);
  });
});
