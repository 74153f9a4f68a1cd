import { mean, sampleVariance } from "simple-statistics";
import { type Day, daysBetween } from "#lib/units/day";

/** What a shop sold in one week. */
export type WeekTotal = { readonly weekStart: Day; readonly total: number };

/** The year's shape: how much more or less than usual is sold in each thirteenth of a year. */
export type SeasonProfile = {
  /** thirteen factors around 1, from 1 January on */
  readonly factors: readonly number[];
  /** whole years that it was learnt from */
  readonly years: number;
  /** how much of the shape that was seen is believed, 0 to 1 */
  readonly believed: number;
};

/** No season: every part of the year as the others. */
export const FLAT_SEASON: SeasonProfile = { factors: new Array<number>(13).fill(1), years: 0, believed: 0 };

const PARTS = 13;
const DAYS_A_YEAR = 365.25;
const WEEKS_A_YEAR = 52;
const WEEKS_A_PART = WEEKS_A_YEAR / PARTS;
/** One year cannot tell a season from a good month: what it shows is believed by half. A guess, no source. */
const BELIEF_IN_ONE_YEAR = 0.5;
const LEAST_FACTOR = 0.2;

/**
 * The shop's season, from all its item types together, drawn towards flat by the evidence: with two years or
 * more, by how far the years agree; with one year, by how far the parts of the year differ more than its weeks do.
 *
 * factor = 1 + believed * (mean of week / level of its year - 1); believed = 1 - noise / variance of the means
 *
 * @param weeks the shop's weeks, oldest first; gaps are allowed
 * @returns the profile; flat with less than 52 weeks from first to last
 * @see Miller and Williams (2003), Shrinkage estimators of time series seasonal factors and their effect on
 * forecasting accuracy, International Journal of Forecasting 19 (from memory); James and Stein (1961)
 * @example seasonProfile([]).believed // 0
 */
export function seasonProfile(weeks: readonly WeekTotal[]): SeasonProfile {
  const last = weeks.at(-1)?.weekStart;
  if (last === undefined) return FLAT_SEASON;
  const aged = weeks.map((week) => ({
    ...week,
    weeksAgo: Math.round(daysBetween(week.weekStart, last) / 7),
  }));
  const years = Math.floor(((aged[0]?.weeksAgo ?? 0) + 1) / WEEKS_A_YEAR);
  if (years === 0) return FLAT_SEASON;
  const yearOf = (weeksAgo: number): number => years - 1 - Math.floor(weeksAgo / WEEKS_A_YEAR);
  const used = aged.filter(({ weeksAgo }) => yearOf(weeksAgo) >= 0);
  const levels = Array.from({ length: years }, (_, year) =>
    meanOr(
      used.filter(({ weeksAgo }) => yearOf(weeksAgo) === year).map(({ total }) => total),
      0,
    ),
  );
  if (levels.some((level) => level <= 0)) return FLAT_SEASON;
  const ratios = used.map(({ weekStart, weeksAgo, total }) => ({
    part: Math.floor(partOf(weekStart)),
    year: yearOf(weeksAgo),
    ratio: total / levelAt(levels, (years * WEEKS_A_YEAR - weeksAgo - 0.5) / WEEKS_A_YEAR - 0.5),
  }));
  const shape = Array.from({ length: PARTS }, (_, part) => yearlyMeans(ratios, part, years));
  const means = shape.map((byYear) => meanOr(byYear, 1));
  const spread = mean(means.map((each) => (each - 1) ** 2));
  const noise = years === 1 ? weekNoise(ratios) / WEEKS_A_PART : yearNoise(shape, years);
  const evidence = spread === 0 ? 0 : Math.max(0, 1 - noise / spread);
  const believed = years === 1 ? evidence * BELIEF_IN_ONE_YEAR : evidence;
  const factors = means.map((each) => Math.max(LEAST_FACTOR, 1 + believed * (each - 1)));
  const centre = mean(factors);
  return { factors: factors.map((factor) => factor / centre), years, believed };
}

/**
 * How much more or less than usual is sold in the week of a day: between the middles of two parts of the year in
 * proportion.
 *
 * @param profile the shop's season
 * @param weekStart first day of the week
 * @returns a factor around 1
 * @example seasonFactor(FLAT_SEASON, day("2026-11-23")) // 1
 */
export function seasonFactor({ factors }: SeasonProfile, weekStart: Day): number {
  const at = partOf(weekStart) - 0.5;
  const before = Math.floor(at);
  const factorOf = (part: number): number => factors[(part + PARTS) % PARTS] ?? 1;
  return factorOf(before) + (at - before) * (factorOf(before + 1) - factorOf(before));
}

/** Where in the year the middle of a week lies, 0 to 13. */
function partOf(weekStart: Day): number {
  const newYear = `${weekStart.slice(0, 4)}-01-01` as Day;
  return ((((daysBetween(newYear, weekStart) + 3.5) / DAYS_A_YEAR) * PARTS) % PARTS) as number;
}

/** The level between the years' means, each standing at the middle of its year. */
function levelAt(levels: readonly number[], at: number): number {
  const below = Math.min(Math.max(Math.floor(at), 0), Math.max(0, levels.length - 2));
  const from = levels[below] ?? 1;
  const to = levels[below + 1] ?? from;
  // Not carried on beyond the middles of the first and the last year: a line through two means runs away.
  const share = Math.min(1, Math.max(0, at - below));
  return from + share * (to - from);
}

type Ratio = { readonly part: number; readonly year: number; readonly ratio: number };

function yearlyMeans(ratios: readonly Ratio[], part: number, years: number): number[] {
  return Array.from({ length: years }, (_, year) =>
    ratios.filter((each) => each.part === part && each.year === year).map(({ ratio }) => ratio),
  ).flatMap((seen) => (seen.length === 0 ? [] : [mean(seen)]));
}

/** Variance of a single week, from how consecutive weeks differ: a slow rise is no noise. */
function weekNoise(ratios: readonly Ratio[]): number {
  const steps = ratios.slice(1).map(({ ratio }, index) => ratio - (ratios[index]?.ratio ?? ratio));
  return (
    meanOr(
      steps.map((step) => step * step),
      Number.POSITIVE_INFINITY,
    ) / 2
  );
}

/** Variance of a part's mean over the years, from how the years differ. */
function yearNoise(shape: readonly (readonly number[])[], years: number): number {
  const variances = shape.filter((byYear) => byYear.length > 1).map((byYear) => sampleVariance([...byYear]));
  return meanOr(variances, Number.POSITIVE_INFINITY) / years;
}

function meanOr(values: readonly number[], otherwise: number): number {
  return values.length === 0 ? otherwise : mean([...values]);
}
