import { describe, expect, it } from "vitest";
import { AGEING_WORDS, monthsWords, movingWords } from "#app/cartons/ageing-words.ts";
import { cartonsFinding } from "#app/cartons/cartons-finding.ts";
import { addDays } from "#lib/units/day";
import { CENT } from "../../lib/cartons/choice/mug-bench";
import { cartonSupply, counted, DOLLARS, onShelf, TODAY } from "./small-shelf";

const carton = (id: string, daysAgo: number | null, cartons: number | null) =>
  onShelf(cartonSupply(id, [12, 12, 12]), {
    useDays: new Map(daysAgo === null ? [] : [[id, [{ day: addDays(TODAY, -daysAgo), cartons: 13 }]]]),
    stock: new Map(cartons === null ? [] : [[id, counted(id, cartons)]]),
    replacement: new Map([[id, 150 * CENT]]),
  });

describe("how a carton moves, in words", () => {
  it("says when it was last used and how long what is there lasts", () => {
    // 13 in 13 weeks: 26 last 26 weeks
    expect(movingWords(carton("a", 10, 26))).toBe("last used 21 Mar; 26 on hand, enough for 6 months");
    expect(movingWords(carton("a", 200, 26))).toBe("last used 12 Sep; 26 on hand");
    expect(movingWords(carton("a", null, 26))).toBe("not used in a year; 26 on hand");
  });

  it("says that it was never counted, or that its book is below zero", () => {
    expect(movingWords(carton("a", 10, null))).toBe("last used 21 Mar; never counted");
    expect(movingWords(carton("a", 10, -2))).toBe("last used 21 Mar; the book is below zero: count");
    expect(movingWords(carton("a", 10, 0))).toBe("last used 21 Mar; 0 on hand");
  });

  it.each([
    [0, "0 weeks"],
    [0.25, "a week"],
    [0.5, "2 weeks"],
    [1.99, "9 weeks"],
    [2, "2 months"],
    [14.4, "14 months"],
    [60, "60 months"],
    [61, "over 5 years"],
  ])("has %d months as “%s”", (months, words) => {
    expect(monthsWords(months)).toBe(words);
  });

  it("has a word for each class, no two alike", () => {
    expect(new Set(Object.values(AGEING_WORDS)).size).toBe(4);
  });
});

describe("the first line of the cartons", () => {
  it("names what sits, with its money and room", () => {
    const cartons = [carton("a", 10, 20), carton("b", 200, 10)];
    // 10 at $1.50; 37.2 l flat are 1.31 cu ft
    expect(cartonsFinding(cartons, DOLLARS)).toBe("One size of 2 sits: 10 cartons, $15.00 and 1.31 cu ft.");
    expect(cartonsFinding([...cartons, carton("c", 300, 1)], DOLLARS)).toBe(
      "2 sizes of 3 sit: 11 cartons, $16.50 and 1.44 cu ft.",
    );
  });

  it("does not speak of what sits where none of it is there", () => {
    expect(cartonsFinding([carton("a", 10, 20), carton("b", 200, 0)], DOLLARS)).toBe(
      "None of the 2 sizes on the shelf sits.",
    );
    expect(cartonsFinding([carton("a", 10, 20), carton("b", 200, null)], DOLLARS)).toBe(
      "None of the 2 sizes on the shelf sits; one was never counted.",
    );
  });

  it("says what to do first where there are none", () => {
    expect(cartonsFinding([], DOLLARS)).toContain("add the sizes");
  });
});
