import type { Metadata } from "next";
import { LEAST_PARCELS } from "#lib/packing/cost-change/cost-trend";
import { materialCost } from "#lib/packing/material-cost";
import { movedWeights } from "#lib/packing/weight/moved-weights";
import { addDays, day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { itemTypesOf } from "#prisma/records/item-types";
import { promisedParcelsSince } from "#prisma/records/promised-parcels";
import { replacementPrices } from "#prisma/records/replacement-prices";
import { savedStock } from "#prisma/records/saved-stock";
import { suppliesOf } from "#prisma/records/supplies";
import { typeCosts } from "#prisma/records/type-costs";
import { weighedParcelsOf } from "#prisma/records/weighed-parcels";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { costText } from "../cost-text";
import { CostTable } from "./_parts/cost-table";
import styles from "./_parts/costs.module.css";
import { PromiseList } from "./_parts/promise-list";
import { SavedList } from "./_parts/saved-list";
import { WeightMoves } from "./_parts/weight-moves";
import { costLines } from "./cost-lines";
import { costsFinding } from "./costs-finding";
import { promiseLines } from "./promise-lines";

export const metadata: Metadata = { title: "What packing costs" };

const SPAN_DAYS = 90;
/** Two years, as far as What broke looks back. */
const PROMISE_DAYS = 728;

/** What does packing an item type cost, is it rising, how often did promises hold, what did saved material spare? */
export default async function CostsPage() {
  const { db, shop, today } = await shopNow();
  const from = addDays(today, 1 - SPAN_DAYS);
  const since = addDays(today, -PROMISE_DAYS);
  const year = { from: day(`${today.slice(0, 4)}-01-01`), to: today };
  const [itemTypes, supplies, prices, now, before, promised, saved, weighed] = await Promise.all([
    itemTypesOf(db, { retired: true }),
    suppliesOf(db, { retired: true }),
    replacementPrices(db),
    typeCosts(db, { from, to: today }),
    typeCosts(db, { from: addDays(from, -SPAN_DAYS), to: addDays(from, -1) }),
    promisedParcelsSince(db, since),
    savedStock(db, year),
    weighedParcelsOf(db, addDays(today, 1)),
  ]);
  const names = new Map([...itemTypes, ...supplies].map((known) => [known.id, known.name]));
  const nameOf = (id: string) => names.get(id) ?? id;
  const unitOf = (id: string) => supplies.find((supply) => supply.id === id)?.useUnit ?? "each";
  const lines = costLines(now, before, prices);
  const unpriced = [...new Set(lines.flatMap(({ mean }) => mean.replacementUnknown))].map(nameOf);
  const worth = materialCost({ lines: saved, cartons: [], unitCosts: prices });
  return (
    <Page
      finding={costsFinding(lines, nameOf, shop)}
      aside={`Parcels packed since ${formatDay(from, { year: true })} that held one item type and nothing unusual. Cash is what the material was booked at on the day packed, with its share of delivery; today’s prices are those of the cheapest offer in use, without delivery.`}
      actions={<ButtonLink href="/parcels">All parcels</ButtonLink>}
    >
      <Section title="By item type" aside="Each name leads to what changed its cost, cause by cause.">
        {lines.length === 0 ? (
          <p>Once parcels are recorded, this says what packing each item type costs.</p>
        ) : (
          <>
            <CostTable lines={lines} nameOf={nameOf} shop={shop} />
            {unpriced.length === 0 ? null : (
              <p className={styles.how}>
                No price on offer is known for {unpriced.join(", ")}: today’s prices leave it out.
              </p>
            )}
            <p className={styles.how}>
              “Rising” and “falling” are said only with {LEAST_PARCELS} parcels or more in both spans, and
              where the two means lie further apart than the spread of the parcels explains: by luck alone
              that would come up in fewer than one of twenty such tables (Welch’s test, its limit divided by
              the number of item types compared).
            </p>
          </>
        )}
      </Section>
      <Section
        title="Promises of weight kept"
        aside={`Parcels packed since ${formatDay(since, { year: true })} with a weight promised at listing. One with several item types counts under the one with most pieces.`}
      >
        {promised.length === 0 ? (
          <p>
            No promise is recorded. Where you say under Pack what was promised at listing, this tells how
            often it held.
          </p>
        ) : (
          <PromiseList lines={promiseLines(promised)} nameOf={nameOf} />
        )}
      </Section>
      <WeightMoves weights={movedWeights(weighed)} nameOf={nameOf} />
      {saved.length === 0 ? null : (
        <Section
          title={`Saved and free material spared ${costText(worth.cost, shop)} this year`}
          aside={`What came in for nothing since ${formatDay(year.from, { year: true })}, at today’s prices: as much as buying it would have cost${worth.unknown.length === 0 ? "" : ", without what has no price"}.`}
        >
          <SavedList saved={saved} unitOf={unitOf} prices={prices} shop={shop} />
        </Section>
      )}
    </Page>
  );
}
