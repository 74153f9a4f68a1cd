import { describe, expect, it } from "vitest";
import { listsTo, stepPrices } from "#app/pack/step-prices.ts";
import { parcelSize } from "#lib/postage/parcel-size";
import { ratio } from "#lib/postage/ratio";
import { micrometres } from "#lib/units/length";
import { BENCH_CARD, BENCH_PRICES, SHIP_DAY } from "./bench-postage";

const ZONES = [
  { zone: "near", share: 3 },
  { zone: "far", share: 1 },
];
const UNTIL = { shipDay: SHIP_DAY, untilMg: 5_000_000 };
const inches = (side: number) =>
  parcelSize(
    [side, side, side].map((each) => micrometres(each * 25_400)),
    null,
    "box",
  );

describe("step prices for the bench", () => {
  it("are the card's, lightest first, and say what is not carried", () => {
    const [near] = listsTo(BENCH_PRICES, "any", "near");
    expect(near?.share).toBe(1);
    expect(near?.steps.map(({ minor, label }) => [minor, label])).toEqual([
      [400, "up to 8 oz"],
      [600, "up to 1 lb"],
      [800, "up to 2 lb"],
      [null, "not carried"],
    ]);
    expect(near?.steps[1]?.upToMg).toBeCloseTo(453_592.37, 2);
    expect(near?.steps.at(-1)?.upToMg).toBe(Number.POSITIVE_INFINITY);
  });

  it("go to each zone with its share where none is chosen, and to none that the card does not have", () => {
    expect(listsTo(BENCH_PRICES, null, null).map(({ share }) => share)).toEqual([0.75, 0.25]);
    expect(listsTo(BENCH_PRICES, null, "moon")).toEqual([]);
  });

  it("are kept once for cartons that pay alike, and anew for one that pays by its size", () => {
    const dimensional = {
      divisor: ratio(139n),
      lengthUnit: "in" as const,
      massUnit: "lb" as const,
      floor: ratio(1728n),
      sides: { kind: "up" as const, to: ratio(1n) },
      result: { kind: "up" as const, to: ratio(1n) },
      shapeFactor: null,
      atMost: null,
      zones: null,
    };
    const sizes = new Map([
      ["small", inches(8)],
      ["smaller", inches(6)],
      ["large", inches(13)],
    ]);
    const prices = stepPrices({ ...BENCH_CARD, dimensional }, ZONES, sizes, UNTIL);
    if (prices === null) throw new TypeError("no prices");
    expect(prices.listAt["small"]).toEqual(prices.listAt["smaller"]);
    expect(prices.listAt["large"]).not.toEqual(prices.listAt["small"]);
    // 13 x 13 x 13 in / 139 = 15.8: billed as 16 lb, over the last step at every weight.
    expect(listsTo(prices, "large", "near")[0]?.steps.every(({ minor }) => minor === null)).toBe(true);
    expect(listsTo(prices, "never seen", "near")).toEqual(listsTo(prices, null, "near"));
  });

  it("are none without a card or a zone", () => {
    expect(stepPrices(null, ZONES, new Map(), UNTIL)).toBeNull();
    expect(stepPrices(BENCH_CARD, [], new Map(), UNTIL)).toBeNull();
  });
});
