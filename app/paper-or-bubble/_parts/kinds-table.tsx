import Link from "next/link";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { classList } from "../../_parts/class-list";
import { styleTitle } from "../../recipes/style-title";
import type { KindAnswer } from "../cushion-answer";
import { type MoneyAndMass, minorText, whyWords } from "../why-words";
import styles from "./paper-or-bubble.module.css";

type KindsTableProps = {
  readonly kinds: readonly KindAnswer[];
  readonly inStyles: readonly CushionStyle[];
  readonly nameOf: (kind: KindAnswer) => string;
  readonly hrefOf: (kind: KindAnswer) => string | null;
  readonly shop: MoneyAndMass;
};

/** Each kind of parcel: what it costs in each style, which wins, and below it why. */
export function KindsTable({ kinds, inStyles, nameOf, hrefOf, shop }: KindsTableProps) {
  return (
    <div className={styles.wide}>
      <table className={classList(styles.table, styles.kinds)}>
        <caption>
          What a parcel of each kind costs: materials bought again and postage expected; time and breakage too
          where you count them
        </caption>
        <thead>
          <tr>
            <th scope="col">Parcel</th>
            <th scope="col" className={styles.desk}>
              To come
            </th>
            {inStyles.map((style) => (
              <th key={style} scope="col">
                {styleTitle(style)}
              </th>
            ))}
            <th scope="col">Saves</th>
          </tr>
        </thead>
        {kinds.map((kind) => (
          <KindRows
            key={nameOf(kind)}
            {...{ kind, inStyles, shop }}
            name={nameOf(kind)}
            href={hrefOf(kind)}
          />
        ))}
      </table>
    </div>
  );
}

type KindRowsProps = Pick<KindsTableProps, "inStyles" | "shop"> & {
  readonly kind: KindAnswer;
  readonly name: string;
  readonly href: string | null;
};

function KindRows({ kind, inStyles, shop, name, href }: KindRowsProps) {
  const [nearest] = kind.comparisons;
  return (
    <tbody>
      <tr className={styles.figuresRow}>
        <th scope="row">{href === null ? name : <Link href={href}>{name}</Link>}</th>
        <td className={styles.desk}>{kind.parcels.toFixed(kind.parcels < 10 ? 1 : 0)}</td>
        {inStyles.map((style) => {
          const cost = kind.costs.find(({ way }) => way.style === style);
          const isCheapest =
            nearest !== undefined &&
            nearest.cheaper.way.style === style &&
            Math.round(nearest.savesMinor) > 0;
          return (
            <td key={style} className={classList(isCheapest && styles.cheap)}>
              {cost === undefined ? "no recipe" : minorText(cost.totalMinor, shop)}
              {isCheapest ? <span className={styles.cheaperMark}> cheaper</span> : null}
            </td>
          );
        })}
        <td>{nearest === undefined ? "" : minorText(nearest.savesMinor, shop)}</td>
      </tr>
      <tr>
        <td colSpan={inStyles.length + 3} className={styles.why}>
          {nearest === undefined ? "" : whyWords(nearest, shop)}
          {nearest === undefined || nearest.isWhole ? null : " A part of it is not known: see above."}
        </td>
      </tr>
    </tbody>
  );
}
