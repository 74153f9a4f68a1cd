import { describe, expect, it } from "vitest";
import { forecastWords } from "#lib/replenishment/forecast-words";
import { supplyForecast } from "./supply-forecast";

const wordsOf = (method: string, weeksSeen: number) =>
  forecastWords(supplyForecast(10, { method, weeksSeen }));

describe("words for how the use was found", () => {
  it("name the recipes, the supply's own weeks, or the first days", () => {
    expect(wordsOf("pieces by their recipes", 30)).toBe(
      "Expected pieces of each item type by today's recipes",
    );
    expect(wordsOf("recipes and own history", 30)).toContain("Mean of pieces by today's recipes");
    expect(wordsOf("several methods", 30)).toBe("Mean of the methods that were nearest over 30 weeks");
    expect(wordsOf("simple smoothing", 30)).toBe("The supply's own 30 weeks, by simple smoothing");
    expect(wordsOf("first weeks", 1)).toBe("From the first 1 week");
    expect(wordsOf("first weeks", 0)).toBe("From the first days");
  });
});
