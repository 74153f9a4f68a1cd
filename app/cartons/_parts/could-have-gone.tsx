import { addDays } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { ShopNow } from "../../_parts/shop-now";
import { idleAnswer } from "../idle-use";
import { couldWords, type IdleNames, keepWords, wayWords } from "../idle-words";
import type { CartonShelf } from "../read-carton-shelf";
import { RECENT_DAYS, type RecentParcels } from "../read-recent-parcels";
import type { ShelfCarton } from "../shelf-carton";

type CouldHaveGoneProps = {
  readonly carton: ShelfCarton;
  readonly shelf: CartonShelf;
  readonly recent: RecentParcels;
  readonly now: Pick<ShopNow, "shop" | "today">;
};

/** What of the recent parcels could have gone in a carton, how many to keep, and what else to do with it. */
export function CouldHaveGone({ carton, shelf, recent, now }: CouldHaveGoneProps) {
  const { use, ways } = idleAnswer(carton, shelf.cartons, recent.parcels, shelf.habits.boxGapUm);
  const names = idleNames(shelf);
  const asked = { parcels: recent.parcels.length - use.wentInIt, days: RECENT_DAYS };
  return (
    <>
      {couldWords(use, asked, names, now.shop).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <p>{keepWords(carton.idle.figure)}</p>
      {ways.length === 0 ? null : (
        <ul>
          {ways.map((way) => (
            <li key={way.kind}>{wayWords(way, names, now.shop)}</li>
          ))}
        </ul>
      )}
      {recent.unknown === 0 ? null : (
        <p>
          {recent.unknown} parcels since {formatDay(addDays(now.today, 1 - RECENT_DAYS))} are not looked at:
          their pieces have no sizes or weight.
        </p>
      )}
    </>
  );
}

/** Names of item types and cartons, as one speaks of them. */
export function idleNames({ itemTypes, cartons }: Pick<CartonShelf, "itemTypes" | "cartons">): IdleNames {
  const types = new Map(itemTypes.map(({ id, name }) => [id, name]));
  const boxes = new Map(cartons.map(({ id, name }) => [id, name]));
  return {
    typeOf: (id) => types.get(id) ?? id,
    cartonOf: (id) => boxes.get(id) ?? id,
  };
}
