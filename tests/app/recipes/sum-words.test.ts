import { describe, expect, it } from "vitest";
import { comparedWords, sumWords } from "#app/recipes/sum-words.ts";
import type { CardSum } from "#lib/packing/card-sum";
import { milligrams } from "#lib/units/mass";
import { costValue } from "#lib/units/money";

const METRIC = { currency: "USD", minorDigits: 2, measures: "metric" } as const;
const sum = (grams: number, cents: number, change: Partial<CardSum> = {}): CardSum => ({
  mass: { mg: milligrams(grams * 1_000), unknown: [] },
  book: { cost: costValue((cents - 10) * 10_000), unknown: [] },
  replacement: { cost: costValue(cents * 10_000), unknown: [] },
  cartons: ["cube-8"],
  ...change,
});
const nameOf = (id: string) => id;

describe("what a parcel by a card comes to, in words", () => {
  it("gives weight, book cost and what it costs to buy again", () => {
    expect(sumWords(sum(797, 204), nameOf, METRIC)).toBe(
      "One piece in its parcel weighs about 797 g, with its carton. Material $1.94 at its cost in the books, $2.04 bought again today.",
    );
  });

  it("does not call part of it the whole", () => {
    const mass = { mg: milligrams(427_000), unknown: ["mug"] };
    const book = { cost: costValue(0), unknown: ["paper", "cube-8"] };
    const words = sumWords(sum(0, 204, { mass, book, cartons: [] }), nameOf, METRIC);
    expect(words).toContain("at least 427 g, without a carton");
    expect(words).toContain("Material not known yet");
    expect(words).toContain("Never weighed: mug. A price is missing: paper, cube-8.");
  });

  it("says why there is no carton in it", () => {
    const none = sum(427, 204, { cartons: [] });
    expect(sumWords(none, nameOf, METRIC)).toContain("about 427 g, without a carton, as none is named.");
    expect(sumWords(none, nameOf, METRIC, "as its row does not count")).toContain(
      "without a carton, as its row does not count.",
    );
  });

  it("holds the other styles against it", () => {
    const others = [
      { style: "bubble" as const, sum: sum(529, 246) },
      { style: "mixed" as const, sum: sum(797, 190) },
    ];
    expect(comparedWords(sum(797, 204), others, METRIC)).toBe(
      "On bubble 268 g lighter, $0.42 dearer. Mixed as heavy, $0.14 cheaper.",
    );
  });

  it("compares only what both know", () => {
    const replacement = { cost: costValue(1), unknown: ["paper"] };
    const other = { style: "bubble" as const, sum: sum(529, 246, { replacement }) };
    expect(comparedWords(sum(797, 204), [other], METRIC)).toBe("On bubble 268 g lighter.");
  });
});
