import { describe, expect, it } from "vitest";
import { changeSentence, reasonsWords, toldChange } from "#app/recipes/[id]/changes/cost-change-words.ts";
import type { CostChange } from "#lib/packing/cost-change/cost-change";

const CENT = 10_000;
const USD = { currency: "USD", minorDigits: 2 };
const nameOf = (id: string) => id;
/** Without what keeps a sign on the line of its number. */
const plain = (words: string) => words.replaceAll("\u2060", "");
const dearer: CostChange = {
  before: 284 * CENT,
  now: 302 * CENT,
  parts: [
    { cause: "price", supplyId: "Packing paper", cost: 9.2 * CENT },
    { cause: "card", supplyId: "Packing paper", cost: 8 * CENT },
    { cause: "card", supplyId: "Tissue", cost: -1.1 * CENT },
    { cause: "carton", supplyId: "Carton 8", cost: -60 * CENT },
    { cause: "carton", supplyId: "Carton 9", cost: 61.9 * CENT },
    { cause: "rest", supplyId: "Tissue", cost: 0 },
  ],
};

describe("a change of cost in words", () => {
  it("tells prices by supply and the other causes as a whole, the largest first", () => {
    const told = toldChange(dearer, nameOf);
    expect(plain(changeSentence("mug pair", "in May", told, USD))).toBe(
      "A parcel of mug pair costs $0.18 more than in May: Packing paper dearer +$0.09, the card takes more +$0.07, dearer cartons chosen +$0.02.",
    );
  });

  it("turns the words where a cause saves", () => {
    const parts = dearer.parts.map((part) => ({ ...part, cost: -part.cost }));
    const told = toldChange({ before: dearer.now, now: dearer.before, parts }, nameOf);
    expect(plain(changeSentence("mug pair", "in May", told, USD))).toBe(
      "A parcel of mug pair costs $0.18 less than in May: Packing paper cheaper −$0.09, the card takes less −$0.07, cheaper cartons chosen −$0.02.",
    );
  });

  it.each([
    [284.4, 302.4],
    [284.4, 302.6],
    [284.6, 302.4],
    [284.5, 302.5],
  ])("adds up as shown, whatever was rounded: %f to %f cents", (before, now) => {
    const scale = (now - before) / 18;
    const parts = dearer.parts.map((part) => ({ ...part, cost: part.cost * scale }));
    const told = toldChange({ before: before * CENT, now: now * CENT, parts }, nameOf);
    const sum = told.reasons.reduce((all, { minor }) => all + minor, 0);
    expect(sum).toBe(told.nowMinor - told.beforeMinor);
  });

  it("names the three largest and sums up the others", () => {
    const reasons = [9, -5, 4, 2, -3].map((minor) => ({ words: `by ${minor}`, minor }));
    expect(plain(reasonsWords(reasons, USD))).toBe("by 9 +$0.09, by -5 −$0.05, by 4 +$0.04, the rest −$0.01");
    expect(plain(reasonsWords(reasons.slice(0, 4), USD))).toMatch(/by 2 \+\$0\.02$/);
  });

  it("says so where nothing changed", () => {
    const told = toldChange({ before: 284 * CENT, now: 284 * CENT, parts: [] }, nameOf);
    expect(changeSentence("mug", "in May", told, USD)).toBe("A parcel of mug costs as much as in May.");
  });
});
