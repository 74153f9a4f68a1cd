import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { FLAT_SEASON, seasonFactor, seasonProfile, type WeekTotal } from "#lib/forecast/season-profile";
import { addDays, day, daysBetween } from "#lib/units/day";
import { seeded } from "./seeded-counts";

const lastWeek = day("2026-11-16");
/** Weeks up to the last one, each by its place and by its share of the year, 0 to 1. */
const weeksOf = (count: number, total: (place: number, ofYear: number) => number): WeekTotal[] =>
  Array.from({ length: count }, (_, place) => {
    const weekStart = addDays(lastWeek, -7 * (count - 1 - place));
    const ofYear = (daysBetween(day(`${weekStart.slice(0, 4)}-01-01`), weekStart) + 3.5) / 365.25;
    return { weekStart, total: total(place, ofYear) };
  });
const SEEDS = Array.from({ length: 20 }, (_, index) => index + 1);
const noisy = (seed: number, weeks: number, expected: (place: number, ofYear: number) => number) => {
  const { count } = seeded(seed);
  return seasonProfile(weeksOf(weeks, (place, ofYear) => count(expected(place, ofYear))));
};
const largestOff = (factors: readonly number[]) => Math.max(...factors.map((factor) => Math.abs(factor - 1)));
const meanOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
/** 40 % more than usual at the turn of the year, as much less in the middle. */
const winter = (ofYear: number) => 1 + 0.4 * Math.cos(2 * Math.PI * ofYear);

describe("season profile", () => {
  it("is flat for less than 52 weeks, and where nothing was sold for a year", () => {
    const peaked = (_: number, ofYear: number) => 100 * winter(ofYear);
    expect(seasonProfile([])).toEqual(FLAT_SEASON);
    expect(seasonProfile(weeksOf(51, peaked))).toEqual(FLAT_SEASON);
    expect(seasonProfile(weeksOf(52, peaked)).years).toBe(1);
    expect(seasonProfile(weeksOf(104, (place) => (place < 52 ? 0 : 30)))).toEqual(FLAT_SEASON);
  });

  it("believes two years of the same clear shape, and finds it", () => {
    const { factors, years, believed } = seasonProfile(weeksOf(104, (_, ofYear) => 100 * winter(ofYear)));
    expect(years).toBe(2);
    expect(believed).toBeGreaterThan(0.95);
    for (const [part, factor] of factors.entries()) {
      expect(Math.abs(factor - winter((part + 0.5) / 13)), `part ${part}`).toBeLessThan(0.05);
    }
  });

  it("finds the shape through the noise of about 60 pieces a week", () => {
    for (const seed of SEEDS) {
      const { factors, believed } = noisy(seed, 104, (_, ofYear) => 60 * winter(ofYear));
      expect(believed, `seed ${seed}`).toBeGreaterThan(0.8);
      for (const [part, factor] of factors.entries()) {
        expect(Math.abs(factor - winter((part + 0.5) / 13)), `seed ${seed}, part ${part}`).toBeLessThan(0.2);
      }
    }
  });

  it("hardly believes two years of noise", () => {
    const profiles = SEEDS.map((seed) => noisy(seed, 104, () => 40));
    expect(meanOf(profiles.map(({ believed }) => believed))).toBeLessThan(0.25);
    expect(meanOf(profiles.map(({ factors }) => largestOff(factors)))).toBeLessThan(0.04);
    for (const { factors } of profiles) expect(largestOff(factors)).toBeLessThan(0.16);
  });

  it("believes one year by half at most, and its noise hardly", () => {
    const clear = seasonProfile(weeksOf(52, (_, ofYear) => 100 * winter(ofYear)));
    expect(clear.believed).toBeLessThanOrEqual(0.5);
    expect(clear.believed).toBeGreaterThan(0.45);
    const profiles = SEEDS.map((seed) => noisy(seed, 60, () => 40));
    expect(meanOf(profiles.map(({ believed }) => believed))).toBeLessThan(0.1);
    for (const { believed } of profiles) expect(believed).toBeLessThanOrEqual(0.5);
  });

  it("does not take steady growth over two years or more for a season", () => {
    for (const weeks of [104, 130, 156]) {
      const { factors } = seasonProfile(weeksOf(weeks, (place) => 40 * 1.5 ** (place / 52)));
      expect(largestOff(factors), `${weeks} weeks`).toBeLessThan(0.01);
    }
    for (const seed of SEEDS) {
      const { factors } = noisy(seed, 104, (place) => 40 * 1.5 ** (place / 52));
      expect(largestOff(factors), `seed ${seed}`).toBeLessThan(0.15);
    }
  });

  it("takes half of a growth within one year for a season: 50 % a year makes less than 10 % up or down", () => {
    const { factors } = seasonProfile(weeksOf(80, (place) => 40 * 1.5 ** (place / 52)));
    expect(largestOff(factors)).toBeLessThan(0.1);
  });

  it("has thirteen factors above 0 that average 1, and is believed from 0 to 1", () => {
    const totals = fc.array(fc.nat(60), { minLength: 0, maxLength: 160 });
    const gaps = fc.array(fc.boolean(), { minLength: 160, maxLength: 160 });
    fc.assert(
      fc.property(totals, gaps, (values, open) => {
        const weeks = weeksOf(values.length, (place) => values[place] ?? 0).filter((_, place) => open[place]);
        const { factors, believed } = seasonProfile(weeks);
        expect(factors).toHaveLength(13);
        expect(meanOf(factors)).toBeCloseTo(1, 9);
        for (const factor of factors) expect(factor).toBeGreaterThan(0);
        expect(believed).toBeGreaterThanOrEqual(0);
        expect(believed).toBeLessThanOrEqual(1);
      }),
      { numRuns: 60 },
    );
  });

  it("is flat where a single week is all that the last year has", () => {
    const weeks = weeksOf(61, () => 20).filter((_, place) => place === 0 || place === 60);
    expect(seasonProfile(weeks).factors).toEqual(FLAT_SEASON.factors);
  });
});

describe("season factor of a week", () => {
  const rising = { ...FLAT_SEASON, factors: Array.from({ length: 13 }, (_, part) => 1 + (part - 6) / 20) };

  it("is 1 all the year in a flat season", () => {
    for (const { weekStart } of weeksOf(60, () => 0)) expect(seasonFactor(FLAT_SEASON, weekStart)).toBe(1);
  });

  it("is the part's own in its middle, and in proportion between two", () => {
    // The middle of the week of 15 January is 17.5 days into the year: 0.62 of a part of 28.1 days; the first middle
    // lies at 0.5.
    const at = (17.5 / 365.25) * 13 - 0.5;
    expect(seasonFactor(rising, day("2026-01-15"))).toBeCloseTo(0.7 + at * 0.05, 9);
    // Half way from the last part to the first at the turn of the year.
    expect(seasonFactor(rising, day("2025-12-29"))).toBeCloseTo((1.3 + 0.7) / 2, 1);
  });

  it("averages 1 over a year, whatever the shape", () => {
    const shapes = fc.array(fc.double({ min: 0.3, max: 3, noNaN: true }), { minLength: 13, maxLength: 13 });
    fc.assert(
      fc.property(shapes, (shape) => {
        const factors = shape.map((each) => each / meanOf(shape));
        const days = Array.from({ length: 365 }, (_, index) =>
          seasonFactor({ ...FLAT_SEASON, factors }, addDays(day("2026-01-01"), index)),
        );
        expect(meanOf(days)).toBeCloseTo(1, 2);
      }),
    );
  });
});
