import Link from "next/link";
import type { KindCost } from "#lib/packing/cost-by-kind";
import { formatMoney, minorOfCost, roundHalfEven } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { kindShares } from "../../kind-shares";
import { knownMoney } from "../../known-money";
import type { CostLine } from "../cost-lines";
import { trendWords } from "../trend-words";
import styles from "./costs.module.css";

type CostTableProps = {
  readonly lines: readonly CostLine[];
  readonly nameOf: (itemTypeId: string) => string;
  readonly shop: Shop;
};

/** What a parcel of each item type costs, what of it is which material, and how it stands against before. */
export function CostTable({ lines, nameOf, shop }: CostTableProps) {
  return (
    <table className={styles.table}>
      <caption className={styles.caption}>Mean material cost of a parcel by item type</caption>
      <thead>
        <tr>
          <th scope="col">Item type</th>
          <th scope="col" className={styles.figure}>
            Parcels
          </th>
          <th scope="col" className={styles.figure}>
            Cash
          </th>
          <th scope="col" className={styles.figure}>
            At today’s prices
          </th>
          <th scope="col">Against the 90 days before</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line) => (
          <CostRow key={line.itemTypeId} line={line} name={nameOf(line.itemTypeId)} shop={shop} />
        ))}
      </tbody>
    </table>
  );
}

function CostRow({
  line,
  name,
  shop,
}: {
  readonly line: CostLine;
  readonly name: string;
  readonly shop: Shop;
}) {
  const { parcels, parcelsBefore, pieces, booked, mean, kinds, trend } = line;
  const isMoving = trend.kind === "rising" || trend.kind === "falling";
  const perPiece = mean.cash * (parcels / pieces);
  return (
    <tr>
      <th scope="row" className={styles.name}>
        <Link href={`/recipes/${encodeURIComponent(line.itemTypeId)}/changes`}>{name}</Link>
        <span className={styles.kinds}>{kindsText(kinds, line, shop)}</span>
      </th>
      <td className={styles.figure}>
        <span className={styles.label}>Parcels </span>
        {parcels}
        <span className={styles.small}> after {parcelsBefore}</span>
      </td>
      <td className={styles.figure}>
        <span className={styles.label}>Cash </span>
        {booked === 0 ? "not known" : moneyOf(mean.cash, shop)}
        {booked > 0 && pieces !== parcels ? (
          <span className={styles.small}> {moneyOf(perPiece, shop)} a piece</span>
        ) : null}
        {booked > 0 && booked < parcels ? <span className={styles.small}> of {booked} parcels</span> : null}
      </td>
      <td className={styles.figure}>
        <span className={styles.label}>At today’s prices </span>
        {knownMoney(minorOfCost(mean.replacement, roundHalfEven), mean.replacementUnknown.length === 0, shop)}
      </td>
      <td className={isMoving ? styles.moving : styles.still}>{trendWords(trend, shop)}</td>
    </tr>
  );
}

/** The kinds that make up the cost, in cash where that is known: "carton $0.96, paper $0.41". */
function kindsText(kinds: readonly KindCost[], { mean, booked }: CostLine, shop: Shop): string {
  return kindShares(kinds, mean)
    .map((share, index) => ({
      kind: kinds[index]?.kind ?? "",
      minor: booked > 0 ? share.cashMinor : share.replacementMinor,
    }))
    .filter(({ minor }) => minor > 0)
    .map(({ kind, minor }) => `${kind} ${formatMoney(minor, shop.currency, shop.minorDigits)}`)
    .join(", ");
}

function moneyOf(cost: number, shop: Shop): string {
  return formatMoney(roundHalfEven(cost / 10_000), shop.currency, shop.minorDigits);
}
