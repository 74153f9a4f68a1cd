import type { ReactNode } from "react";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMass, milligrams } from "#lib/units/mass";
import { formatMoney } from "#lib/units/money";
import type { ParcelDetail } from "#prisma/records/parcel-lists";
import type { Shop } from "#prisma/records/shop";
import { brokenCauseWords } from "../broken-causes";
import { cartonsText } from "../parcel-text";
import styles from "./parcels.module.css";

const WHOLE_SHARE = 12_000;
const PER_CENT = 100;

/** What is known of a parcel, in words. */
export function ParcelFacts({ parcel, shop }: { readonly parcel: ParcelDetail; readonly shop: Shop }) {
  const facts: [string, ReactNode][] = [
    ["Carton", cartonsText(parcel.cartons)],
    ["Style", parcel.style],
    ["Zone", parcel.zoneName ?? "not said"],
    ["Orders", ordersText(parcel)],
    ["Scale", scaleText(parcel, shop)],
    ...(parcel.promisedMg === null
      ? []
      : [["Promised", promisedText(parcel, parcel.promisedMg, shop)] as [string, ReactNode]]),
    [
      "Postage",
      parcel.postageMinor === null
        ? "not said"
        : formatMoney(parcel.postageMinor, shop.currency, shop.minorDigits),
    ],
    ["Posted", parcel.postedOn === null ? "not marked yet" : dayText(parcel.postedOn)],
    ...(parcel.brokenOn === null
      ? []
      : [["Arrived broken", brokenText(parcel, parcel.brokenOn)] as [string, ReactNode]]),
    ...(parcel.returnedOn === null ? [] : [["Came back", dayText(parcel.returnedOn)] as [string, ReactNode]]),
    ...(parcel.unusual ? [["Unusual", "kept out of averages"] as [string, ReactNode]] : []),
    ...(parcel.note === null ? [] : [["Note", parcel.note] as [string, ReactNode]]),
    ...(parcel.source === null ? [] : [["Came in by", `import of ${parcel.source}`] as [string, ReactNode]]),
  ];
  return (
    <dl className={styles.facts}>
      {facts.map(([term, words]) => (
        <div key={term} className={styles.fact}>
          <dt>{term}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}

function dayText(text: string): string {
  return formatDay(day(text), { weekday: true, year: true });
}

function scaleText(parcel: ParcelDetail, shop: Shop): string {
  if (parcel.scaleMg === null) return "not weighed";
  const shown = formatMass(milligrams(parcel.scaleMg), shop.measures);
  return parcel.scaleTyped === null || parcel.scaleTyped === shown
    ? shown
    : `${shown} (typed ${parcel.scaleTyped})`;
}

/** What was promised at most, and whether it held. */
function promisedText(parcel: ParcelDetail, promisedMg: number, shop: Shop): string {
  const promised = `up to ${parcel.promisedTyped ?? formatMass(milligrams(promisedMg), shop.measures)}`;
  if (parcel.scaleMg === null) return `${promised}; not weighed`;
  const over = parcel.scaleMg - promisedMg;
  return over <= 0
    ? `${promised}: kept`
    : `${promised}: broken by ${formatMass(milligrams(over), shop.measures)}`;
}

function brokenText(parcel: ParcelDetail, on: string): string {
  const words = [brokenCauseWords(parcel.brokenCause), parcel.brokenNote].filter((each) => each !== null);
  return `${dayText(on)}: ${words.join(". ")}`;
}

function ordersText(parcel: ParcelDetail): string {
  if (parcel.orders.length === 0) return "none named";
  if (parcel.orders.length === 1) return parcel.orders[0]?.reference ?? "";
  return parcel.orders
    .map((order) => `${order.reference} (${Math.round((order.share / WHOLE_SHARE) * PER_CENT)} %)`)
    .join(", ");
}
