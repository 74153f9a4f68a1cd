import type { CountInterval } from "#lib/packing/learning/count-interval";
import type { CardStep } from "#lib/packing/learning/recipe-proposals";
import { evenRandom } from "#lib/statistics/even-random";
import { gammaDraw } from "#lib/statistics/gamma-draw";
import { normalDraw, type Random } from "#lib/statistics/normal-draw";
import { type Amount, amountOfUnits } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";

/** A supply's shelf over a year, with what only the player knows. */
export type PlayedShelf = {
  readonly intervals: readonly CountInterval[];
  readonly cards: readonly CardStep[];
  /** real use over the card, by step */
  readonly factors: ReadonlyMap<string, number>;
  /** real use over the cards in each interval, all steps together */
  readonly realUnits: readonly number[];
  readonly cardUnits: readonly number[];
};

/** What is wrong with the cards: nothing; some are a fifth low, from the start or from a later week on; or all sorts. */
export type CardErrors = "none" | "fifth" | "fifth-later" | "mixed";

/** The week from which on more is used where the cards were right before. */
export const LATER_WEEK = 26;

const FIRST_DAY = day("2025-01-06");
const WEEKS = 52;
const SUPPLIES = 8;
const ITEM_TYPES = 8;
const CARD_UNITS = [0.5, 1, 1, 1.5, 2, 3, 4, 6, 8, 11];

type Step = {
  readonly supply: number;
  readonly itemType: number;
  readonly stepKey: string;
  /** taken for each piece, or once a parcel */
  readonly per: "pieces" | "parcels";
  readonly units: number;
  readonly factor: number;
};

/** What was packed of an item type in a week. */
type Packed = { readonly parcels: number; readonly pieces: number };

/**
 * A shop that packs and counts for a year. Every use differs from the card by a gamma distribution, hands differ from week
 * to week, piles are counted by eye with Laplace errors and rounded to whole units, one count in fifty is misread by a
 * quarter, now and then some of the pile is spoilt and not booked.
 *
 * @param seed whole number
 * @param errors what is wrong with the cards
 * @returns one shelf for each supply that is used
 */
export function countedShelves(seed: number, errors: CardErrors): PlayedShelf[] {
  const random = evenRandom(seed);
  const steps = stepsOf(errors, random);
  const rates = Array.from({ length: ITEM_TYPES }, (_, at) => (14 * (0.5 + random())) / (1 + at));
  const parcels = Array.from({ length: WEEKS }, (_, week) =>
    rates.map((rate): Packed => {
      const packed = weekly(rate * (1 + 0.35 * Math.sin((2 * Math.PI * week) / WEEKS)), random);
      const pairs = Array.from({ length: packed }, () => random() < 0.3).filter(Boolean).length;
      return { parcels: packed, pieces: packed + pairs };
    }),
  );
  return Array.from({ length: SUPPLIES }, (_, supply) => supply).flatMap((supply) => {
    const own = steps.filter((step) => step.supply === supply);
    return own.length === 0 ? [] : [shelf(own, parcels, errors === "fifth-later" ? LATER_WEEK : 0, random)];
  });
}

function stepsOf(errors: CardErrors, random: Random): Step[] {
  const common = Array.from({ length: SUPPLIES }, () => (errors === "mixed" && random() < 0.15 ? 1.4 : 1));
  return Array.from({ length: ITEM_TYPES }, (_, itemType) => itemType).flatMap((itemType) =>
    Array.from({ length: 3 + Math.floor(2 * random()) }, (_, step): Step => {
      const supply = Math.floor(SUPPLIES * random() ** 1.5);
      return {
        supply,
        itemType,
        stepKey: `type-${itemType}/step-${step}`,
        per: step % 2 === 0 ? "pieces" : "parcels",
        units: CARD_UNITS[Math.floor(CARD_UNITS.length * random())] ?? 1,
        factor: (common[supply] ?? 1) * ownFactor(errors, random),
      };
    }),
  );
}

function ownFactor(errors: CardErrors, random: Random): number {
  const [kind, side, size] = [random(), random(), normalDraw(random)];
  if (errors === "none") return 1;
  if (errors !== "mixed") return kind < 0.2 ? 1.2 : 1;
  if (kind < 0.5) return 1;
  return kind < 0.75 ? Math.exp(0.12 * size) : 1 + (side < 0.65 ? 0.2 : -0.2);
}

function shelf(
  steps: readonly Step[],
  parcels: readonly (readonly Packed[])[],
  changeWeek: number,
  random: Random,
): PlayedShelf {
  const timesOf = ({ itemType, per }: Step, week: readonly Packed[]): number => week[itemType]?.[per] ?? 0;
  const cardsFor = (week: readonly Packed[]): number =>
    steps.reduce((sum, step) => sum + step.units * timesOf(step, week), 0);
  const usual = parcels.reduce((sum, week) => sum + cardsFor(week), 0) / WEEKS;
  const pack = Math.max(10, Math.round(6 * usual));
  let real = 2 * pack;
  let counted = read(real, random);
  const realUnits: number[] = [];
  const intervals = parcels.map((week, at): CountInterval => {
    const hand = Math.exp(0.04 * normalDraw(random)) * (random() < 0.05 ? 1.15 : 1);
    const used = steps.reduce((sum, step) => {
      const now = at < changeWeek ? { ...step, factor: 1 } : step;
      return sum + hand * usesOf(now, timesOf(step, week), random);
    }, 0);
    realUnits.push(used);
    const received = real - used < 2.5 * usual ? pack * Math.ceil(used / pack + 1) : 0;
    const unbooked = random() < 0.02 ? 0.05 * real : 0;
    real += received - used - unbooked;
    const opening = counted;
    counted = read(real, random);
    const from = dayOf(at);
    return {
      from,
      to: addDays(from, 7),
      opening: { counted: amountOfUnits(opening), method: "height" },
      closing: { counted: amountOfUnits(counted), method: "height" },
      received: amountOfUnits(received),
      spoilt: amountOfUnits(0),
      usedByBook: amountOfUnits(cardsFor(week)),
      uses: steps.map((step) => ({
        stepKey: step.stepKey,
        recipeKey: `type-${step.itemType}`,
        times: timesOf(step, week),
        amount: amountOfUnits(step.units),
      })),
    };
  });
  return {
    intervals,
    cards: steps.map(({ stepKey, units }): { stepKey: string; says: Amount } => ({
      stepKey,
      says: amountOfUnits(units),
    })),
    factors: new Map(steps.map(({ stepKey, factor }) => [stepKey, factor])),
    realUnits,
    cardUnits: parcels.map(cardsFor),
  };
}

function dayOf(week: number): Day {
  return addDays(FIRST_DAY, 7 * week);
}

/** Many parcels some weeks, few in others: Poisson about a gamma rate. */
function weekly(rate: number, random: Random): number {
  const mean = gammaDraw({ shape: 6, scale: rate / 6 }, random);
  let count = 0;
  for (let left = random(); left > Math.exp(-mean); left *= random()) count += 1;
  return count;
}

/** So many uses, each with a hand of its own: their gamma distributions add up to one. */
function usesOf({ units, factor }: Step, times: number, random: Random): number {
  if (times === 0) return 0;
  return gammaDraw({ shape: times * 10, scale: (units * factor) / 10 }, random);
}

/** A pile counted by eye. */
function read(real: number, random: Random): number {
  const side = random() < 0.5 ? -1 : 1;
  const laplace = side * -Math.log(1 - random());
  const misread = random() < 0.02 ? 1 + side * 0.25 : 1;
  return Math.max(0, Math.round(real * (1 + 0.03 * laplace) * misread));
}
