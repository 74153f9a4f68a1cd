import { describe, expect, it } from "vitest";
import { dropWords, minorText, shareText, whyWords } from "#app/paper-or-bubble/why-words.ts";
import { comparisons } from "#lib/cushioning/comparison";
import { type WayCost, type WayTerms, wayCost } from "#lib/cushioning/way-cost";
import { BUBBLE, bell, PAPER, POUND, plainCost, TERMS } from "../../lib/cushioning/small-ways";
import { DOLLARS } from "../cartons/small-shelf";

function why(ways: readonly WayCost[], shop: Parameters<typeof whyWords>[1] = DOLLARS): string {
  const [nearest] = comparisons(ways);
  if (nearest === undefined) throw new RangeError("two ways are held against each other");
  return whyWords(nearest, shop);
}

const costs = (change: Partial<WayTerms> = {}, value: number | null = null) =>
  [PAPER, BUBBLE].map((way) => wayCost(way, { ...TERMS, ...change }, value));
/** Both far under the 1 lb step. */
const light = (change: Partial<WayTerms> = {}) => [
  wayCost({ ...PAPER, weight: bell(POUND / 2) }, { ...TERMS, ...change }, null),
  wayCost({ ...BUBBLE, weight: bell(POUND / 3) }, { ...TERMS, ...change }, null),
];

describe("why one way to pack is cheaper", () => {
  it("tells the weight saved, the step and the money, and what is paid more for", () => {
    // 120 g; 0.9772 - 0.1587 of the parcels, 2.50 each (normal table); 200 against 180 of materials
    expect(why(costs())).toBe(
      "Bubble saves 4.2 oz, which brings 82 in 100 of these parcels under the 2 lb step: $2.05 less postage, against $0.20 more for materials.",
    );
    expect(why(costs(), { ...DOLLARS, measures: "metric" })).toMatch(/^Bubble saves 120 g, which/);
  });

  it("says that both pay each step as often where that is so", () => {
    expect(why(light())).toBe("Paper’s materials cost $0.20 less; both pay each postage step as often.");
    const notTaken = light().map((cost) => ({ ...cost, postageMinor: null }));
    expect(why(notTaken)).not.toContain("postage");
  });

  it("does not say so where no postage is known", () => {
    expect(why(costs({ card: null }))).toBe("Paper’s materials cost $0.20 less.");
    expect(why([plainCost("paper", 300), plainCost("bubble", 200)])).toBe(
      "Bubble’s materials cost $1.00 less.",
    );
  });

  it("does not say so where more is paid for weight, in a postage that does not decide", () => {
    // Bubble at 20 c a square foot less: 4 x 5 = 20 c against 180; the postage of 2.05 still decides. At 150 it does not.
    const replacement = new Map([...TERMS.replacement, ["bubble", 1_500_000] as const]);
    // Materials 700 against 180, 520 less on paper, which pays 2.05 more postage for its 120 g.
    expect(why(costs({ replacement }))).toBe(
      "Paper’s materials cost $5.20 less, against $2.05 more postage for 4.2 oz more weight.",
    );
  });

  it("is no comparison where the postage of one is not known", () => {
    const [, bubble] = costs();
    if (bubble === undefined) throw new RangeError("bubble was costed");
    const unweighed = wayCost({ ...PAPER, weight: null }, TERMS, null);
    expect(unweighed.totalMinor).toBeLessThan(bubble.totalMinor);
    expect(why([unweighed, bubble])).toBe(
      "Paper’s postage is not known and counts as nothing here: the two can’t be held against each other yet.",
    );
  });

  it("claims no lighter parcel where the cheaper one is not lighter", () => {
    // A letter's size may cost less to send than a lighter box.
    const [paper, bubble] = costs();
    if (paper === undefined || bubble === undefined) throw new RangeError("two ways were costed");
    const small = { ...paper, postageMinor: 300, totalMinor: 480 };
    expect(why([small, bubble])).toBe("Paper pays $5.31 less postage, and $0.20 less for materials.");
  });

  it("tells the time, and whose is not said", () => {
    const minutes = { paper: 4, bubble: 6, mixed: null };
    // 2 minutes of 30.00 an hour are 1.00; materials of 180 against 200
    expect(why(light({ minutes, hourMinor: 3_000 }))).toBe(
      "Paper takes less of your time, worth $1.00, and $0.20 less for materials.",
    );
    expect(why(light({ minutes: { ...minutes, paper: null }, hourMinor: 3_000 }))).toBe(
      "Paper’s minutes are not said and count as none, against $3.00.",
    );
  });

  it("tells what breaks, and of which way that is not said", () => {
    const [bubble, paper] = [
      plainCost("bubble", 250, {}, { materialsMinor: 200, breakageMinor: 50 }),
      plainCost("paper", 400, {}, { materialsMinor: 100, breakageMinor: 300 }),
    ];
    expect(why([paper, bubble])).toBe(
      "Bubble breaks less often than paper, worth $2.50 by what you said, against $1.00 more for materials.",
    );
    expect(why([paper, { ...bubble, breakageMinor: null, totalMinor: 200 }])).toBe(
      "How often bubble breaks is not said and counts as never, against $3.00 for paper, against $1.00 more for materials.",
    );
  });

  it("says that both cost the same where they do, to the coin", () => {
    expect(why([plainCost("paper", 200), plainCost("bubble", 200.4)])).toBe(
      "Both cost the same to the last coin.",
    );
  });

  it("writes money by the shop's currency, whatever its sign holds", () => {
    const yen = { currency: "JPY", minorDigits: 0, measures: "metric" } as const;
    expect(why(costs(), yen)).toMatch(/¥205 less postage, against ¥20 more for materials\.$/);
    const euros = { ...DOLLARS, currency: "EUR" };
    expect(why(costs(), euros)).toMatch(/€2\.05 less postage, against €0\.20 more for materials\.$/);
  });
});

describe("shares and money in words", () => {
  it.each([
    [0.9951, "nearly all"],
    [0.995, "nearly all"],
    [0.9949, "99 in 100"],
    [0.614, "61 in 100"],
    [0.01, "1 in 100"],
    [0.0099, "less than 1 in 100"],
  ])("%s of the parcels are %s", (share, words) => {
    expect(shareText(share)).toBe(words);
  });

  it("name the band of a step where it has a name", () => {
    const [held] = comparisons(costs());
    const dropped = held?.dropped ?? null;
    if (dropped === null) throw new RangeError("a step divides the two");
    const band = { ...dropped.step.band, name: "Small parcel" };
    expect(dropWords({ ...dropped, step: { ...dropped.step, band } })).toBe(
      "brings 82 in 100 of these parcels into Small parcel, up to 2 lb",
    );
  });

  it("round money to the coin", () => {
    expect(minorText(204.6, DOLLARS)).toBe("$2.05");
    expect(minorText(-12.2, DOLLARS)).toBe("-$0.12");
  });
});
