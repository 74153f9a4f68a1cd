import { describe, expect, it } from "vitest";
import { breakEvenWords } from "#app/paper-or-bubble/[id]/break-even-words.ts";
import { finePrice } from "#app/paper-or-bubble/fine-price.ts";
import { comparison } from "#lib/cushioning/comparison";
import { plainCost } from "../../../lib/cushioning/small-ways";
import { DOLLARS } from "../../cartons/small-shelf";

const money = (value: number) => finePrice(value, DOLLARS);
const BUBBLE = plainCost("bubble", 1_031, { bubble: 4 });
const PAPER = plainCost("paper", 1_215, { sheets: 10 });
const held = comparison(BUBBLE, PAPER);

describe("at which price the choice turns, in words", () => {
  it("is the price, who wins on either side, and what the sums take", () => {
    // 25 c + (1,215 - 1,031) / 4 = 71 c
    const supply = { id: "bubble", name: "Large bubble", unit: "sq ft" };
    expect(breakEvenWords(held, supply, 250_000, money)).toBe(
      "With Large bubble at $0.71 a sq ft both cost the same: below it bubble is cheaper, above it paper. The sums here take it at $0.25.",
    );
  });

  it("is that no price helps", () => {
    const supply = { id: "sheets", name: "Packing paper", unit: "sheet" };
    expect(breakEvenWords(held, supply, 80_000, money)).toBe(
      "Even with Packing paper for nothing, bubble stays cheaper.",
    );
  });

  it("is nothing where both take as much of it", () => {
    expect(breakEvenWords(held, { id: "carton", name: "Carton", unit: "" }, 1_000_000, money)).toBeNull();
  });
});
