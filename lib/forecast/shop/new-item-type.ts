import type { Route } from "#lib/forecast/route";
import { FIRST_WEEKS } from "#lib/forecast/shop/first-weeks";
import type { ItemTypeSeries, ShopGround } from "#lib/forecast/shop/shop-ground";

/** The rate of the nearest item type weighs as much as so many weeks of records. A guess, no source. */
const WEEKS_OF_BELIEF = 2;

/** How an item type that is new in an older shop is forecast. */
export type NewItemType = {
  /** the item type whose rate it starts from */
  readonly likeId: string;
  readonly route: Route;
  /** share of the rate that is still the other type's */
  readonly guessedShare: number;
};

/**
 * Forecast of an item type that was first sold within the last 8 weeks: it starts from the rate of the item type of
 * nearest mass (where none is known, from the middle one) and moves to its own pieces as they come.
 *
 * (2 * rate of the nearest + pieces since the first) / (2 + weeks since the first)
 *
 * @param ground the shop's ground
 * @param typeIndex place of the item type in it
 * @returns null where it is not new, or there is no older type to start from
 * @see gamma-Poisson with a prior worth two weeks, `rate-belief.ts`
 */
export function newItemType(ground: ShopGround, typeIndex: number): NewItemType | null {
  const type = ground.types[typeIndex];
  const weeks = ground.weeks.length;
  if (type === undefined || type.firstSold === null || weeks - type.firstSold > FIRST_WEEKS) return null;
  const isOlder = (other: ItemTypeSeries): boolean =>
    other.firstSold !== null && weeks - other.firstSold > FIRST_WEEKS;
  const { level, shares } = ground.levelAfter(weeks);
  const older = ground.types
    .map((other, index) => ({ other, rate: level * (shares[index] ?? 0) }))
    .filter(({ other }) => isOlder(other));
  const near = nearest(type, older);
  if (near === undefined) return null;
  const seen = type.pieces.slice(type.firstSold);
  const rateAfter = (pieces: readonly number[]): number =>
    (WEEKS_OF_BELIEF * near.rate + pieces.reduce((sum, each) => sum + each, 0)) /
    (WEEKS_OF_BELIEF + pieces.length);
  const { firstSold } = type;
  return {
    likeId: near.other.id,
    guessedShare: WEEKS_OF_BELIEF / (WEEKS_OF_BELIEF + seen.length),
    route: {
      name: "like another item type",
      freedom: 0,
      forecast: (steps) => new Array<number>(steps).fill(rateAfter(seen)),
      forecastAfter: (count, steps) => {
        const pieces = type.pieces.slice(firstSold, count);
        return new Array<number>(steps).fill(pieces.length === 0 ? 0 : rateAfter(pieces));
      },
    },
  };
}

type Candidate = { readonly other: ItemTypeSeries; readonly rate: number };

function nearest(type: ItemTypeSeries, older: readonly Candidate[]): Candidate | undefined {
  const mass = type.massGrams;
  if (mass !== null && older.some(({ other }) => other.massGrams !== null)) {
    const away = ({ other }: Candidate): number =>
      other.massGrams === null ? Number.POSITIVE_INFINITY : Math.abs(Math.log(other.massGrams / mass));
    return older.reduce((best, each) => (away(each) < away(best) ? each : best));
  }
  return older.toSorted((a, b) => a.rate - b.rate)[Math.floor(older.length / 2)];
}
