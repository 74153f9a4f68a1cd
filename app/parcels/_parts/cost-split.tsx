import { costByKind, type TakenMaterial } from "#lib/packing/cost-by-kind";
import { minorOfCost, roundHalfEven } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { classList } from "../../_parts/class-list";
import { kindShares } from "../kind-shares";
import { knownMoney } from "../known-money";
import styles from "./parcels.module.css";

type CostSplitProps = {
  readonly taken: readonly TakenMaterial[];
  readonly prices: ReadonlyMap<string, number>;
  readonly nameOf: (supplyId: string) => string;
  readonly shop: Shop;
};

/** What each kind of material in a parcel cost, as booked and at today's prices. */
export function CostSplit({ taken, prices, nameOf, shop }: CostSplitProps) {
  const { kinds, total } = costByKind(taken, prices);
  const shares = kindShares(kinds, total);
  const unpriced = total.replacementUnknown.map(nameOf);
  return (
    <>
      <div className={styles.wide}>
        <table className={classList(styles.list, styles.split)}>
          <caption className={styles.caption}>Cost by kind of material</caption>
          <thead>
            <tr>
              <th scope="col">Kind</th>
              <th scope="col" className={styles.figure}>
                Cash
              </th>
              <th scope="col" className={styles.figure}>
                At today’s prices
              </th>
            </tr>
          </thead>
          <tbody>
            {kinds.map(({ kind, cashUnknown, replacementUnknown }, index) => (
              <tr key={kind}>
                <th scope="row">{kind}</th>
                <td className={styles.figure}>
                  {knownMoney(shares[index]?.cashMinor ?? 0, cashUnknown.length === 0, shop)}
                </td>
                <td className={styles.figure}>
                  {knownMoney(shares[index]?.replacementMinor ?? 0, replacementUnknown.length === 0, shop)}
                </td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">Together</th>
              <td className={styles.figure}>
                {knownMoney(minorOfCost(total.cash, roundHalfEven), total.cashUnknown.length === 0, shop)}
              </td>
              <td className={styles.figure}>
                {knownMoney(minorOfCost(total.replacement, roundHalfEven), unpriced.length === 0, shop)}
              </td>
            </tr>
          </tfoot>
        </table>
      </div>
      {unpriced.length === 0 ? null : (
        <p>No price on offer is known for {unpriced.join(", ")}: the second column leaves it out.</p>
      )}
    </>
  );
}
