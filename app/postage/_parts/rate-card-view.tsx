import { holdsOn } from "#lib/postage/card-on";
import { measureWords } from "#lib/postage/typed-measure";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import type { Shop } from "#prisma/records/shop";
import type { Zone } from "#prisma/records/zones";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { dropRateCard, keepRateCard } from "../actions";
import { rateCardFields } from "../rate-card-fields";
import styles from "./rate-card-view.module.css";

type RateCardViewProps = {
  readonly kept: ReadRateCard;
  readonly shop: Shop;
  readonly zones: readonly Zone[];
  readonly today: Day;
};

/** A rate card as a table, with its days and the way to change it. */
export function RateCardView({ kept, shop, zones, today }: RateCardViewProps) {
  const { service, validFrom, validTo, card } = kept;
  const nameOf = (id: string) => zones.find((zone) => zone.id === id)?.name ?? "a zone taken off";
  const days = `From ${formatDay(validFrom, { year: true })} ${validTo === null ? "until further notice" : `to ${formatDay(validTo, { year: true })}`}`;
  return (
    <Section title={service} aside={`${days}${holdsOn(kept, today) ? "" : ", not today"}.`}>
      <div className={styles.wide}>
        <table className={styles.table}>
          <caption className={styles.caption}>Prices of {service}</caption>
          <thead>
            <tr>
              <th scope="col">Up to</th>
              {kept.zoneIds.map((id) => (
                <th key={id} scope="col" className={styles.price}>
                  {nameOf(id)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {card.bands.flatMap((band) =>
              band.steps.map(({ upTo, prices }) => (
                <tr key={`${band.name} ${measureWords(upTo)}`}>
                  <th scope="row">{measureWords(upTo)}</th>
                  {kept.zoneIds.map((id, at) => (
                    <td key={id} className={styles.price}>
                      {moneyWords(prices[at] ?? null, shop)}
                    </td>
                  ))}
                </tr>
              )),
            )}
          </tbody>
        </table>
      </div>
      <details className={styles.change}>
        <summary>Change this card</summary>
        <RecordForm
          action={keepRateCard.bind(null, kept.id)}
          label={`Change ${service}`}
          fields={rateCardFields(kept, zones, today)}
          submit="Save the card"
        />
        <RecordForm
          action={dropRateCard.bind(null, kept.id)}
          label={`Take off ${service}`}
          fields={[]}
          submit="Take this card off"
          tone="plain"
        />
      </details>
    </Section>
  );
}

function moneyWords(minor: number | null, shop: Shop): string {
  return minor === null ? "no price" : formatMoney(minor, shop.currency, shop.minorDigits);
}
