import { daysBetween } from "#lib/units/day";
import type { SupplyPricePaid } from "#prisma/records/prices-paid";
import styles from "./buying.module.css";

const WIDTH = 140;
const HEIGHT = 36;
const EDGE = 4;

/** Prices that hardly moved are drawn as a nearly flat line: the scale is never less than this share of the highest. */
const LEAST_SPREAD = 0.25;

/** The prices of one supply as a stepped line on a scale of its own; its figures stand in the table behind. */
export function PriceLine({ paid }: { readonly paid: readonly SupplyPricePaid[] }) {
  const [first] = paid;
  const last = paid.at(-1);
  if (first === undefined || last === undefined) return null;
  const days = Math.max(1, daysBetween(first.on, last.on));
  const prices = paid.map((price) => price.perUnit);
  const [least, most] = [Math.min(...prices), Math.max(...prices)];
  const spread = Math.max(most - least, most * LEAST_SPREAD, 1);
  const foot = (least + most - spread) / 2;
  const x = (price: SupplyPricePaid) => EDGE + (daysBetween(first.on, price.on) / days) * (WIDTH - 2 * EDGE);
  const y = (price: SupplyPricePaid) =>
    HEIGHT - EDGE - ((price.perUnit - foot) / spread) * (HEIGHT - 2 * EDGE);
  const steps = paid.map((price, index) =>
    index === 0 ? `M${x(price)} ${y(price)}` : `H${x(price)} V${y(price)}`,
  );
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      width={WIDTH}
      height={HEIGHT}
      aria-hidden="true"
      className={styles.line}
    >
      <path d={steps.join(" ")} className={styles.steps} />
      <circle cx={x(last)} cy={y(last)} r="3" className={styles.dot} />
    </svg>
  );
}
