import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { askedWhatIf, priceField, priceText, triedQuery } from "#app/paper-or-bubble/what-if.ts";

const KNOWN = {
  supplyIds: ["bubble", "sheets"],
  cardIds: ["pounds", "letters"],
  minorDigits: 2,
  shownNow: (id: string) => (id === "bubble" ? "0.252" : ""),
};
const asked = (query: Readonly<Record<string, string>>) => askedWhatIf(query, KNOWN);
const priceOf = (typed: string) => asked({ "price-bubble": typed }).whatIf.prices.get("bubble");

describe("what an address asks to try out", () => {
  it("is nothing where it asks for nothing, or for what is so already", () => {
    for (const query of [{}, { pieces: "2" }, { "price-bubble": "0.252" }]) {
      expect(asked(query)).toEqual({ whatIf: { prices: new Map(), cardId: null }, problems: new Map() });
    }
  });

  it.each([
    ["0.3", 300_000],
    ["0,3", 300_000],
    ["0,252", 252_000],
    ["0.0757", 75_700],
    [".25", 250_000],
    [",25", 250_000],
    [" 1.2 ", 1_200_000],
    ["1,234", 1_234_000],
    ["3", 3_000_000],
    ["0", 0],
    ["$0.30", 300_000],
    ["0.30 USD", 300_000],
  ])("reads %s as a price for a use unit, with up to four digits behind the point", (typed, value) => {
    expect(priceOf(typed)).toBe(value);
    expect(asked({ "price-bubble": typed }).problems.size).toBe(0);
  });

  it.each([
    "cheap",
    "-0.3",
    "0.25252",
    ".",
    ",",
    "1.2.3",
    "NaN",
    "Infinity",
    "1e3",
    "0x10",
    "9".repeat(17),
    "9".repeat(400),
    "<b>1</b>",
  ])("says at its field that %s is no price, and tries nothing", (typed) => {
    const { whatIf, problems } = asked({ "price-bubble": typed });
    expect(whatIf.prices.size).toBe(0);
    expect([...problems]).toEqual([["price-bubble", `“${typed}” is no price. Type one like 0.252.`]]);
  });

  it("names a price to type where none is known", () => {
    expect(asked({ "price-sheets": "dear" }).problems.get("price-sheets")).toMatch(/Type one like 0\.25\./);
  });

  it("looks at no supply but those whose price can be tried", () => {
    expect(asked({ "price-gold": "1", "price-": "2", price: "3" }).whatIf.prices.size).toBe(0);
  });

  it("takes a rate card that is kept, and says where it is not", () => {
    expect(asked({ card: "letters" }).whatIf.cardId).toBe("letters");
    const lost = asked({ card: "last year", "price-bubble": "0.3" });
    expect(lost.whatIf).toEqual({ prices: new Map([["bubble", 300_000]]), cardId: null });
    expect([...lost.problems]).toEqual([["card", expect.stringMatching(/not kept any more/)]]);
  });
});

describe("a price as it stands in its field", () => {
  it.each([
    [252_000, 2, "0.252"],
    [250_000, 2, "0.25"],
    [1_000_000, 2, "1.00"],
    [36_458, 2, "0.0365"],
    [75_721, 2, "0.0757"],
    [120_000, 0, "12"],
    [100_000, 0, "10"],
    [125_000, 0, "12.5"],
    [2_520_000, 3, "0.252"],
  ])("writes %s with %s digits of the currency as %s", (value, minorDigits, text) => {
    expect(priceText(value, minorDigits)).toBe(text);
  });

  it("is read back as what it says, in currencies with any digits", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 50_000_000 }),
        fc.constantFrom(0, 2, 3),
        (hundredths, minorDigits) => {
          const value = hundredths * 100;
          const { whatIf, problems } = askedWhatIf(
            { "price-bubble": priceText(value, minorDigits) },
            { ...KNOWN, minorDigits, shownNow: () => "" },
          );
          expect([...problems]).toEqual([]);
          expect(whatIf.prices.get("bubble")).toBe(value);
        },
      ),
    );
  });
});

describe("the tail of an address", () => {
  it("carries prices and the card and nothing else, escaped", () => {
    expect(triedQuery({ pieces: "2", [priceField("bubble")]: "0.3", card: "a&b" })).toBe(
      "&price-bubble=0.3&card=a%26b",
    );
    expect(triedQuery({ pieces: "2" })).toBe("");
  });
});
