import { describe, expect, it } from "vitest";
import { cartonFacts } from "#app/cartons/carton-facts.ts";
import type { Supply } from "#prisma/records/supplies";
import { CENT, inches } from "../../lib/cartons/choice/mug-bench";
import { cartonSupply, counted, DOLLARS, onShelf } from "./small-shelf";

const facts = (change: Partial<Supply> = {}, grossMg: number | null = null) => {
  const carton = onShelf(cartonSupply("cube-12", [12, 12, 12], change), {
    stock: new Map([["cube-12", counted("cube-12", 10)]]),
    replacement: new Map([["cube-12", 150 * CENT]]),
  });
  return new Map(cartonFacts(carton, DOLLARS, grossMg).map(({ name, words }) => [name, words]));
};

describe("what is known of a carton", () => {
  it("is its sizes, its weight, its money and its room, guesses as guesses", () => {
    const known = facts();
    expect(known.get("Inside")).toBe("12 × 12 × 12 in");
    expect(known.get("Outside")).toMatch(/ in, by its board: what postage is charged for$/);
    // 434.7 g by its blank
    expect(known.get("Empty")).toBe("15.3 oz, a guess by its board: weigh one");
    expect(known.get("Money and room")).toBe("$15.00 on the shelf, $1.50 each; 1.31 cu ft flat, a guess");
    expect(known.get("Used")).toBe("0 in 30 days, 0 in 90, 0 in a year");
  });

  it("is measured where it was measured, and weighed where it was weighed", () => {
    const { lengthUm, widthUm, heightUm } = inches(12.5, 12.5, 13);
    const outside = { outsideLengthUm: lengthUm, outsideWidthUm: widthUm, outsideHeightUm: heightUm };
    const known = facts({ ...outside, massMg: 453_592 });
    expect(known.get("Outside")).toContain("12½ × 12½ × 13 in, as measured");
    expect(known.get("Empty")).toBe("1 lb");
  });

  it("bears what the certificate's row for its rating says, fragile goods what the post says", () => {
    // 32 ECT pairs with 200 psi: 65 lb and 75 in by the carriers' certificate, 45 lb by a post's table of 2002; both are
    // held in tests/reference/carton-strength.test.ts.
    expect(facts().get("Bears")).toBe(
      "65 lb gross, up to 75 in of length, width and height together; fragile goods 45 lb",
    );
  });

  it("bears less where its board was used before, which is a guess", () => {
    // 70 % of 65 and 45 lb
    const words = facts({ boardUsed: true }).get("Bears");
    expect(words).toContain("45 lb 8 oz gross");
    expect(words).toContain("fragile goods 31 lb 8 oz; used board, counted as 70 % of its rating, a guess");
  });

  it("says that nobody wrote its stamp down, or that it has none and counts as an inner box", () => {
    expect(facts({ rating: null }).get("Bears")).toContain("its stamp is not written down");
    const unrated = facts({ rating: "none" }, 9_000_000);
    expect(unrated.get("Bears")).toContain("no rating that counts for sending");
    expect(unrated.has("Stack")).toBe(false);
  });

  it("stacks the lower the heavier it is packed, and says nothing of it before a weight is known", () => {
    const high = (grossMg: number) => Number(facts({}, grossMg).get("Stack")?.split(" ")[0]);
    expect(facts().has("Stack")).toBe(false);
    expect(high(15_000_000)).toBeGreaterThan(high(29_000_000));
    // Its board bears more of the light ones than stand below a shoulder: 1.4 m over 12 5/8 in.
    expect(high(5_000_000)).toBe(4);
    expect(facts({}, 5_000_000).get("Stack")).toContain("a rough figure");
  });
});
