import { randomUUID } from "node:crypto";
import type { Metadata } from "next";
import { stockOf, suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { shopNow } from "../../_parts/shop-now";
import { StartChoices } from "../_parts/start-choices";
import { countedDayOf } from "../supplies-now";
import { CountLine } from "./_parts/count-line";
import styles from "./_parts/count-list.module.css";
import { countFinding } from "./count-finding";
import { countLineView } from "./count-line-view";

export const metadata: Metadata = { title: "Count" };

/** The counting walk: one line each supply, in the order of the shelf, so that a saved line stays where it is. */
export default async function CountPage() {
  const { db, shop, today } = await shopNow();
  const [supplies, stocks] = await Promise.all([suppliesOf(db), stockOf(db)]);
  const stockById = new Map(stocks.map((stock) => [stock.supplyId, stock]));
  const lines = supplies.map((supply) => {
    const stock = stockById.get(supply.id);
    const countedDay = stock === undefined ? null : countedDayOf(stock, shop);
    return countLineView(supply, { amount: stock?.amount ?? null, countedDay }, today);
  });
  return (
    <Page
      finding={countFinding(lines)}
      aside="Each line is saved on its own: stop where you like. Not sure? Skip the line: unknown is not zero."
      actions={lines.length === 0 ? <StartChoices /> : <ButtonLink href="/">See this week</ButtonLink>}
    >
      {lines.length === 0 ? null : (
        <ol className={styles.list}>
          {lines.map((line) => (
            <CountLine key={line.supplyId} line={line} countKey={randomUUID()} />
          ))}
        </ol>
      )}
    </Page>
  );
}
