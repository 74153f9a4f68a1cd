import { describe, expect, it } from "vitest";
import { actionWords } from "#app/this-week/action-words.ts";
import { day } from "#lib/units/day";

describe("action words", () => {
  it("set the order-by day apart from the rest of the sentence", () => {
    const row = {
      action: "order-this-week" as const,
      orderByDate: day("2026-11-27"),
      sentence: "Lasts until 7 Dec; order by Fri 27 Nov.",
    };
    expect(actionWords(row)).toEqual({
      tone: "act",
      before: "Lasts until 7 Dec; ",
      asked: "order by Fri 27 Nov",
      after: ".",
    });
  });

  it("leave a sentence whole that asks for nothing", () => {
    const row = {
      action: "enough" as const,
      orderByDate: day("2027-01-20"),
      sentence: "Enough until 1 Feb.",
    };
    expect(actionWords(row)).toEqual({ tone: "stock", before: "Enough until 1 Feb.", asked: "", after: "" });
  });

  it("lose no word of a sentence", () => {
    const sentence = "Never counted: count this to get a date. No use recorded yet.";
    const parts = actionWords({ action: "count", orderByDate: null, sentence });
    expect(parts.before + parts.asked + parts.after).toBe(sentence);
    expect(parts.asked).toBe("count this");
  });
});
