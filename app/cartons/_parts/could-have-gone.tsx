import { addDays } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { ShopNow } from "../../_parts/shop-now";
import type { IdleAnswer } from "../idle-use";
import { couldWords, type IdleNames, idleAdvice } from "../idle-words";
import type { CartonShelf } from "../read-carton-shelf";
import { RECENT_DAYS, type RecentParcels } from "../read-recent-parcels";
import type { ShelfCarton } from "../shelf-carton";

type CouldHaveGoneProps = {
  readonly carton: ShelfCarton;
  readonly answer: IdleAnswer;
  readonly shelf: CartonShelf;
  readonly recent: RecentParcels;
  readonly now: Pick<ShopNow, "shop" | "today">;
};

/** What of the recent parcels could have gone in a carton, how many to keep, and what else to do with it. */
export function CouldHaveGone({ carton, answer, shelf, recent, now }: CouldHaveGoneProps) {
  const names = idleNames(shelf);
  const advice = idleAdvice(answer, carton.idle.figure, names, now.shop);
  const asked = { parcels: recent.parcels.length - answer.use.wentInIt, days: RECENT_DAYS };
  return (
    <>
      {couldWords(answer.use, asked, names, now.shop).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <p>{advice.first}</p>
      {advice.ways.length === 0 ? null : (
        <ul>
          {advice.ways.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      )}
      {recent.unknown === 0 ? null : (
        <p>
          {recent.unknown === 1 ? "One parcel" : `${recent.unknown} parcels`} since{" "}
          {formatDay(addDays(now.today, 1 - RECENT_DAYS))} {recent.unknown === 1 ? "is" : "are"} not looked
          at: {recent.unknown === 1 ? "its" : "their"} pieces have no sizes or weight.
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
