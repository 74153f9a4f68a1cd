import { materialCost } from "#lib/packing/material-cost";
import { formatAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";
import type { SavedSupply } from "#prisma/records/saved-stock";
import type { Shop } from "#prisma/records/shop";
import { costText } from "../../cost-text";
import styles from "./costs.module.css";

type SavedListProps = {
  readonly saved: readonly SavedSupply[];
  readonly unitOf: (supplyId: string) => UseUnit;
  readonly prices: ReadonlyMap<string, number>;
  readonly shop: Shop;
};

/** What came in for nothing, and what buying it would have cost. */
export function SavedList({ saved, unitOf, prices, shop }: SavedListProps) {
  return (
    <dl className={styles.list}>
      {saved.map((supply) => {
        const { cost, unknown } = materialCost({ lines: [supply], cartons: [], unitCosts: prices });
        return (
          <div key={supply.supplyId} className={styles.line}>
            <dt>{supply.name}</dt>
            <dd>
              {formatAmount(supply.amount, unitOf(supply.supplyId))}:{" "}
              {unknown.length > 0 ? "no price on offer is known" : costText(cost, shop)}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
