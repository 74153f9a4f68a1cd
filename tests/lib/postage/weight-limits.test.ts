import { describe, expect, it } from "vitest";
import { NO_WALLS } from "#lib/postage/size-walls";
import { weightLimits } from "#lib/postage/weight-limits";
import { minorUnits } from "#lib/units/money";
import { plainBand, plainCard, stepUpTo, typed } from "./rate-card-fixture";

const walls = { ...NO_WALLS, weight: typed("1.5", "kg") };
const steps = [stepUpTo("1", "kg", [400]), stepUpTo("2", "kg", [650])];
const beyond = { kind: "perFurther" as const, each: typed("500", "g"), prices: [minorUnits(120)] };

describe("the weights at which a card changes its answer", () => {
  it("are its steps and the most weight of its bands, each once, and one past them", () => {
    const card = plainCard({
      bands: [plainBand(steps, { name: "small", walls }), plainBand(steps, { name: "large" })],
    });
    const { mg, bands } = weightLimits(card, 0);
    expect(mg).toEqual([1_000_000, 1_500_000, 2_000_000, Number.POSITIVE_INFINITY]);
    expect(bands.map(({ within }) => within)).toEqual([2, 4]);
    expect(bands.map((band) => band.steps.map((step) => step?.stepAt ?? null))).toEqual([
      [0, 1, 1, null],
      [0, 1, 1, null],
    ]);
  });

  it("reach as far as is asked in further units, and are worked out again only then", () => {
    const card = plainCard({ bands: [plainBand(steps, { beyond })] });
    const near = weightLimits(card, 2_100_000);
    expect(near.mg).toEqual([1_000_000, 2_000_000, 2_500_000, Number.POSITIVE_INFINITY]);
    expect(weightLimits(card, 2_400_000)).toBe(near);
    expect(weightLimits(card, 2_600_000).mg).toHaveLength(5);
  });

  it("have the last whole multiple before a limit where weights are rounded up", () => {
    const card = plainCard({
      bands: [plainBand([stepUpTo("1", "kg", [400])])],
      roundUpTo: typed("300", "g"),
    });
    expect(weightLimits(card, 0).mg.slice(0, 2)).toEqual([900_000, 1_000_000]);
  });

  it("give the same step as the same object", () => {
    const { bands } = weightLimits(plainCard({ bands: [plainBand(steps, { walls })] }), 0);
    expect(bands[0]?.steps[1]).toBe(bands[0]?.steps[2]);
  });
});
