import type { CushionStyle } from "#lib/packing/recipe-version";
import { classList } from "../../_parts/class-list";
import type { CushionAnswer } from "../cushion-answer";
import { totalsReason } from "../totals-reason";
import { type MoneyAndMass, minorText } from "../why-words";
import styles from "./paper-or-bubble.module.css";

type TotalsAboveProps = { readonly answer: CushionAnswer; readonly shop: MoneyAndMass };

const ALL_IN: Readonly<Record<CushionStyle, string>> = {
  paper: "All on paper",
  bubble: "All on bubble",
  mixed: "All mixed",
};

/** What all parcels to come cost in each style, and the reason: before anything else is asked for. */
export function TotalsAbove({ answer, shop }: TotalsAboveProps) {
  const { allIn, best } = answer;
  const least = Math.min(...[...allIn.values()].map(({ totalMinor }) => totalMinor));
  return (
    <>
      <dl className={styles.totals}>
        {[...allIn].map(([style, { totalMinor }]) => (
          <div key={style} className={classList(totalMinor === least && styles.cheapest)}>
            <dt>{ALL_IN[style]}</dt>
            <dd>{minorText(totalMinor, shop)}</dd>
          </div>
        ))}
        <div>
          <dt>Each the cheaper way</dt>
          <dd>{minorText(best.totalMinor, shop)}</dd>
        </div>
      </dl>
      <p>{totalsReason(answer, shop)}</p>
    </>
  );
}
