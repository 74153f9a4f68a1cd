import { randomUUID } from "node:crypto";
import Link from "next/link";
import { amountOfUnits } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { purchasesOf } from "#prisma/records/purchase-orders";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import type { ShopNow } from "../../_parts/shop-now";
import { handToBuying } from "../actions";
import type { KindAnswer } from "../cushion-answer";
import { piecesKey } from "../cushion-answer";
import { draftedAlready } from "../purchase/drafted-already";
import { orderField } from "../purchase/handed-orders";
import { timesItsPrice } from "../purchase/mix-question-of";
import { planColumns, planRows } from "../purchase/purchase-rows";
import {
  anotherPackWords,
  buysWords,
  changeWords,
  type PlanNames,
  packsWords,
  proofWords,
  splitWords,
} from "../purchase/purchase-words";
import { type Purchase, readPurchase } from "../purchase/read-purchase";
import { STOCK_COLUMNS, stockRows } from "../purchase/stock-rows";
import type { Compared } from "../read-compared";
import { minorText } from "../why-words";
import styles from "./paper-or-bubble.module.css";
import { RowsTable } from "./rows-table";

type NextPurchaseProps = {
  readonly now: ShopNow;
  readonly compared: Compared;
  readonly nameOf: (kind: Pick<KindAnswer, "pieces">) => string;
};

/** The next purchase: which packs, which parcels in which style, against all on one, and how sure that is. */
export async function NextPurchase({ now, compared, nameOf }: NextPurchaseProps) {
  const { ground, answer, asked } = compared;
  const [purchase, orders] = await Promise.all([
    readPurchase(now, ground, answer, asked.whatIf),
    purchasesOf(now.db, { others: 0 }),
  ]);
  if (purchase === null) {
    return (
      <Section title="The next purchase">
        <p>
          Nothing that your parcels take was counted yet. <Link href="/supplies/count">Count it</Link>, and
          the plan stands here.
        </p>
      </Section>
    );
  }
  const kinds = new Map(
    [...answer.kinds, ...answer.untold, ...answer.single].map((kind) => [piecesKey(kind.pieces), kind]),
  );
  const supplies = new Map(ground.supplies.map(({ id, name }) => [id, name]));
  const names: PlanNames = {
    offerOf: (offerId) => {
      const offer = ground.offers.find(({ id }) => id === offerId);
      if (offer === undefined || offer.priceMinor === null) return offer;
      const times = timesItsPrice(offer.supplyId, {
        tried: asked.whatIf.prices,
        priceNow: ground.replacement,
      });
      return { ...offer, priceMinor: Math.round(offer.priceMinor * times) };
    },
    supplyName: (supplyId) => supplies.get(supplyId) ?? supplyId,
    kindName: (typeId) => {
      const kind = kinds.get(typeId);
      return kind === undefined ? typeId : nameOf(kind);
    },
    shop: now.shop,
  };
  return (
    <Section
      title={`For the next ${ground.weeks} weeks, buy ${buysWords(purchase.study.mixed, names)}`}
      id="purchase"
      rule="strong"
      aside="From the parcels expected, what is there and on order, your suppliers’ packs and price breaks, room and the most to spend. Beside it the safety stock of the weekly check stays. By which day to order is said by This week."
    >
      <PlanFacts
        amountOf={(supplyId, units) => {
          const supply = ground.supplies.find(({ id }) => id === supplyId);
          return formatAmount(amountOfUnits(units), supply?.useUnit ?? "each");
        }}
        purchase={purchase}
        names={names}
        isTried={asked.whatIf.prices.size > 0 || asked.whatIf.cardId !== null}
        drafted={draftedAlready(purchase.study.mixed.orders, orders)}
      />
    </Section>
  );
}

type PlanFactsProps = {
  readonly purchase: Purchase;
  readonly names: PlanNames;
  /** use units of a supply in words */
  readonly amountOf: (supplyId: string, units: number) => string;
  /** whether prices or a rate card are tried out: such a plan is not for ordering */
  readonly isTried: boolean;
  /** a warning that packs of the plan stand in drafts already */
  readonly drafted: string | null;
};

function PlanFacts({ purchase, names, amountOf, isTried, drafted }: PlanFactsProps) {
  const { study, notCounted } = purchase;
  const { mixed } = study;
  const columns = planColumns(study);
  return (
    <>
      <Orders {...{ purchase, names, isTried, drafted }} />
      <details className={styles.more}>
        <summary>What becomes of each supply</summary>
        <RowsTable
          caption="Until the next purchase; what is left has its safety stock in it"
          head="Supply"
          columns={STOCK_COLUMNS}
          rows={stockRows(mixed, names.supplyName, amountOf)}
        />
      </details>
      {splitWords(mixed, names).map((words) => (
        <p key={words}>{words}</p>
      ))}
      <RowsTable
        caption="Against all parcels in one style, each with its own cheapest purchase"
        head="Part"
        columns={columns.map(({ name }) => name)}
        rows={planRows(columns, names.shop)}
      />
      <p className={styles.small}>{proofWords(mixed, names.shop)}</p>
      <ul className={styles.plan}>
        {study.anotherPacks.map((another) => (
          <li key={another.supplyId}>{anotherPackWords(another, names)}</li>
        ))}
        {study.dearer === null ? null : (
          <li>{changeWords(study.dearer, "With bubble 20 % dearer", names)}</li>
        )}
        {study.soldOut === null ? null : (
          <li>{changeWords(study.soldOut, "Were bubble sold out everywhere,", names)}</li>
        )}
      </ul>
      <Undone purchase={purchase} names={names} />
      {notCounted.length === 0 ? null : (
        <p>
          Never counted, so left out of the plan: {notCounted.map(names.supplyName).join(", ")}.{" "}
          <Link href="/supplies/count">Count it</Link>
        </p>
      )}
    </>
  );
}

function Orders({
  purchase: { study, suppliers },
  names,
  isTried,
  drafted,
}: Omit<PlanFactsProps, "amountOf">) {
  const { orders } = study.mixed;
  if (orders.length === 0)
    return <p>What is there and on order lasts; nothing has to be bought for these parcels.</p>;
  const nameOf = (supplierId: string) => suppliers.find(({ id }) => id === supplierId)?.name ?? supplierId;
  const key = randomUUID();
  return (
    <>
      <ul className={styles.plan}>
        {orders.map(({ supplierId, lines, goodsMinor, deliveryMinor }) => (
          <li key={supplierId}>
            {nameOf(supplierId)}: {lines.map((line) => packsWords(line, names)).join(", ")};{" "}
            {minorText(goodsMinor, names.shop)}
            {deliveryMinor === 0
              ? ", delivery free"
              : ` and ${minorText(deliveryMinor, names.shop)} delivery`}
          </li>
        ))}
      </ul>
      {drafted === null ? null : <p>{drafted}</p>}
      {isTried ? (
        <p className={styles.small}>
          While prices or a rate card are tried out there is nothing to hand over.
        </p>
      ) : (
        <RecordForm
          action={handToBuying}
          label="Hand the plan to Buying"
          fields={[
            { name: "key", label: "", kind: "hidden", value: key },
            { name: "order", label: "", kind: "hidden", value: orderField(orders) },
          ]}
          submit="Hand to Buying as drafts"
          tone="primary"
        />
      )}
    </>
  );
}

function Undone({ purchase: { study }, names }: Pick<PlanFactsProps, "purchase" | "names">) {
  const { unpacked, shortfalls } = study.mixed;
  return (
    <>
      {unpacked.map(({ typeId, parcels }) => (
        <p key={typeId}>
          About {Math.ceil(parcels)} parcels of {names.kindName(typeId)} cannot be packed: what it takes is
          not to be had within the limits.
        </p>
      ))}
      {shortfalls.length === 0 ? null : (
        <p>
          Below its safety stock at the end:{" "}
          {shortfalls.map(({ supplyId }) => names.supplyName(supplyId)).join(", ")}.
        </p>
      )}
    </>
  );
}
