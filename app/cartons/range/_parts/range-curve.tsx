import type { KeptRange } from "#prisma/records/carton-ranges";
import { type ShopWords, valueText } from "../../choice-words";
import type { RangeCandidate } from "../range-question";
import styles from "./range.module.css";

type RangeCurveProps = {
  readonly kept: KeptRange;
  readonly today: NonNullable<KeptRange["today"]>;
  readonly candidates: readonly RangeCandidate[];
  readonly todaySizes: number;
  readonly shop: ShopWords;
  readonly shown: number;
};

const WIDTH = 640;
const HEIGHT = 200;
const LEFT = 8;
const FOOT = 24;

/** What a year's parcels cost in the best range of one, two, three … sizes, with today's range beside them. */
export function RangeCurve({ kept, today, candidates, todaySizes, shop, shown }: RangeCurveProps) {
  const points = kept.points.filter(({ unpackedParcels }) => unpackedParcels <= today.unpackedParcels);
  const values = [...points.map(({ value }) => value), today.value];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const step = (WIDTH - 2 * LEFT) / Math.max(kept.most, todaySizes);
  const x = (sizes: number) => LEFT + (sizes - 0.5) * step;
  const y = (value: number) => 14 + ((high - value) / Math.max(1, high - low)) * (HEIGHT - FOOT - 28);
  const line = points.map(({ most, value }, at) => `${at === 0 ? "M" : "L"}${x(most)} ${y(value)}`).join("");
  return (
    <>
      <svg
        className={styles.curve}
        viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
        role="img"
        aria-label="Cost of a year's parcels by the number of sizes; the table below has the figures"
      >
        <path className={styles.line} d={line} />
        {points.map(({ most, value }) => (
          <circle
            key={most}
            className={most === shown ? styles.shown : styles.dot}
            cx={x(most)}
            cy={y(value)}
            r={5}
          />
        ))}
        <path className={styles.today} d={`M${x(todaySizes) - 6} ${y(today.value)}h12m-6 -6v12`} />
        {points.map(({ most }) => (
          <text key={most} className={styles.axis} x={x(most)} y={HEIGHT - 6}>
            {most}
          </text>
        ))}
      </svg>
      <p className={styles.small}>
        Across: how many sizes. Up: what a year's parcels cost. The cross is today's range.
      </p>
      <table className={styles.table}>
        <caption>The best ranges</caption>
        <thead>
          <tr>
            <th scope="col">Sizes</th>
            <th scope="col">A year costs</th>
            <th scope="col">Against today</th>
            <th scope="col" className={styles.which}>
              Which
            </th>
          </tr>
        </thead>
        <tbody>
          {kept.points.map(({ most, value, unpackedParcels, chosen, proof }) => (
            <tr key={most}>
              <th scope="row">{most}</th>
              <td>{unpackedParcels > 0 ? noneWords(unpackedParcels) : valueText(value, shop)}</td>
              <td>{unpackedParcels > 0 ? "" : against(value - today.value, shop)}</td>
              <td className={styles.which}>
                {chosen.map((at) => candidates[at]?.name ?? "").join(", ")}
                <span className={styles.small}>
                  {proof.proven ? " proven" : ` at most ${(proof.gap * 100).toFixed(1)} % better is possible`}
                </span>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function against(more: number, shop: ShopWords): string {
  if (more === 0) return "the same";
  return more < 0 ? `${valueText(-more, shop)} less` : `${valueText(more, shop)} more`;
}

function noneWords(parcels: number): string {
  return parcels === 1 ? "one parcel fits none" : `${parcels} parcels fit none`;
}
