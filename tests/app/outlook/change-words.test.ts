import { describe, expect, it } from "vitest";
import { changeCell, changeWords } from "#app/outlook/change-words.ts";

describe("change against the weeks before", () => {
  it("is said in percent, in times from twice on, and not at all within 5\u00a0%", () => {
    expect([120, 80, 220, 104].map((expected) => changeWords(expected, 100).row)).toEqual([
      "20\u00a0% more",
      "20\u00a0% less",
      "2.2 times as much",
      "about the same",
    ]);
    expect(changeWords(80, 100).sentence).toBe("20\u00a0% fewer than");
  });

  it("names what it is held against", () => {
    expect(changeCell(120, 100, "sheet")).toBe("20\u00a0% more (100 sheets)");
  });

  it("needs weeks to be held against, and something in them", () => {
    expect(changeCell(120, null, "sheet")).toBe("not so many weeks of records yet");
    expect(changeCell(120, 0, "sheet")).toBe("more (none then)");
    expect(changeCell(0, 0, "sheet")).toBe("none, as then");
  });
});
