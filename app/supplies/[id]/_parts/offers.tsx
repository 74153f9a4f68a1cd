import Link from "next/link";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import type { Offer } from "#prisma/records/suppliers";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import { unitCostWords } from "../../unit-cost-words";
import { keepOffer } from "../buying-actions";
import { offerFields } from "../offer-fields";
import { packUnitCost, type SupplyScreen } from "../supply-screen";
import styles from "./buying.module.css";

type OffersProps = { readonly screen: SupplyScreen; readonly shop: Shop };

/** Where the supply is bought: packs, prices and price breaks. */
export function Offers({ screen, shop }: OffersProps) {
  const { supply, offers, suppliers } = screen;
  if (suppliers.length === 0) {
    return (
      <Section title="Nobody sells this yet" id="offers">
        <p>
          <Link href="/setup#suppliers">Add a supplier</Link> with its lead time first; its packs are added
          here.
        </p>
      </Section>
    );
  }
  return (
    <Section title={offers.length === 0 ? "No offer yet" : "Where it is bought"} id="offers">
      <ul className={styles.list}>
        {offers.map((offer) => (
          <li key={offer.id} className={styles.row}>
            <OfferWords offer={offer} screen={screen} shop={shop} />
            <details className={styles.details}>
              <summary>Change this offer</summary>
              <RecordForm
                action={keepOffer.bind(null, supply.id)}
                label={`Offer ${offer.pack}`}
                fields={offerFields(suppliers, shop, offer)}
                submit="Save the offer"
              />
            </details>
          </li>
        ))}
      </ul>
      <details className={styles.details}>
        <summary>Add an offer</summary>
        <RecordForm
          action={keepOffer.bind(null, supply.id)}
          label="New offer"
          fields={offerFields(suppliers, shop, null)}
          submit="Add the offer"
        />
      </details>
    </Section>
  );
}

function OfferWords({ offer, screen, shop }: OffersProps & { readonly offer: Offer }) {
  const { suppliers, supply } = screen;
  const supplier = suppliers.find((row) => row.id === offer.supplierId);
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const each = (minor: number) => unitCostWords(packUnitCost(minor, offer.packAmount), supply.useUnit, shop);
  return (
    <div>
      <p className={styles.main}>
        {offer.pack}
        <span className={styles.figure}>
          {offer.priceMinor === null ? "no price" : money(offer.priceMinor)}
        </span>
      </p>
      <p className={styles.aside}>
        {supplier?.name ?? "a supplier no longer used"}
        {supplier === undefined ? "" : `, ${daysText(supplier.leadTimeDays)}`}
        {offer.priceMinor === null ? "" : ` · ${each(offer.priceMinor)}`}
        {offer.breaks
          .map((step) => ` · from ${step.fromPacks}: ${money(step.priceMinor)}, ${each(step.priceMinor)}`)
          .join("")}
        {offer.breaks.length > 0 && offer.breakKind === "incremental" ? " (for the packs from there on)" : ""}
        {offer.volumeTyped === null ? "" : ` · takes ${offer.volumeTyped}`}
        {offer.mostPacksAMonth === null ? "" : ` · at most ${offer.mostPacksAMonth} a month`}
        {offer.soldOut ? " · sold out now" : ""}
        {beforeWords(screen.offerPrices.get(offer.id) ?? [], money)}
      </p>
    </div>
  );
}

/** The price before the present one, and until when it held. */
function beforeWords(
  prices: readonly { readonly fromDay: string; readonly priceMinor: number }[],
  money: (minor: number) => string,
): string {
  const last = prices.at(-1);
  const before = prices.at(-2);
  if (last === undefined || before === undefined) return "";
  return ` · ${money(before.priceMinor)} until ${formatDay(day(last.fromDay), { year: true })}`;
}

function daysText(days: number): string {
  return days === 1 ? "1 day" : `${days} days`;
}
