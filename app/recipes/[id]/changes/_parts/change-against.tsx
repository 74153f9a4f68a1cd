import { costChange } from "#lib/packing/cost-change/cost-change";
import { parcelsIn } from "#lib/packing/cost-change/packed-period";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import type { PackedSpan } from "#prisma/records/packing-costs";
import type { Shop } from "#prisma/records/shop";
import { Button } from "../../../../_parts/button";
import { Field } from "../../../../_parts/field";
import { Section } from "../../../../_parts/section";
import { changeSentence, signedMoney, toldChange } from "../cost-change-words";
import styles from "./changes.module.css";

type ChangeAgainstProps = {
  readonly name: string;
  readonly against: Day;
  readonly problem: string | undefined;
  readonly before: PackedSpan;
  readonly now: PackedSpan;
  readonly cartons: ReadonlySet<string>;
  readonly nameOf: (supplyId: string) => string;
  readonly shop: Shop;
};

const RULE =
  "Each cause has the mean of what it adds over all orders in which the causes could have changed (Shapley’s rule), so that the parts add up to the difference. What both periods cost is as booked with their parcels.";

/** What a parcel costs now against four weeks that end on a day, cause by cause. */
export function ChangeAgainst(props: ChangeAgainstProps) {
  const { name, against, problem, before, now, cartons, nameOf, shop } = props;
  const than = `in the four weeks to ${formatDay(against, { year: true })}`;
  const counts = { before: parcelsIn(before), now: parcelsIn(now) };
  const told =
    counts.before === 0 || counts.now === 0 ? null : toldChange(costChange(before, now, cartons), nameOf);
  const leftOut = before.leftOut + now.leftOut;
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  return (
    <Section
      title={
        told === null
          ? `No parcels to compare ${counts.now === 0 ? "in the last four weeks" : than}.`
          : changeSentence(name, than, told, shop)
      }
      id="against"
      rule="strong"
      aside={`Parcels that held nothing else and nothing unusual: ${counts.before} then, ${counts.now} in the last four weeks.${
        leftOut === 0 ? "" : ` Left out, as a cost was not known: ${leftOut}.`
      }`}
    >
      {told === null ? null : (
        <>
          <ul className={styles.reasons}>
            <li>
              <span>A parcel then</span>
              <span>{money(told.beforeMinor)}</span>
            </li>
            {told.reasons.map(({ words, minor }) => (
              <li key={words}>
                <span>{words}</span>
                <span>{signedMoney(minor, shop)}</span>
              </li>
            ))}
            <li className={styles.sum}>
              <span>A parcel now</span>
              <span>{money(told.nowMinor)}</span>
            </li>
          </ul>
          <p className={styles.small}>{RULE}</p>
        </>
      )}
      <form method="get" className={styles.against} aria-label="Compare with another day">
        <Field
          label="Against the four weeks to"
          name="against"
          type="date"
          size="short"
          defaultValue={against}
          error={problem}
        />
        <Button type="submit">Compare</Button>
      </form>
    </Section>
  );
}
