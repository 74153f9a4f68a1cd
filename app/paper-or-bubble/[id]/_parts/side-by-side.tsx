import type { UnitPrices } from "#lib/cushioning/way-cost";
import { amountOfUnits } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { Section } from "../../../_parts/section";
import { styleTitle } from "../../../recipes/style-title";
import styles from "../../_parts/paper-or-bubble.module.css";
import { RowsTable } from "../../_parts/rows-table";
import type { KindAnswer } from "../../cushion-answer";
import type { CushionGround } from "../../cushion-ground";
import type { MoneyAndMass } from "../../why-words";
import { billRows, costRows } from "../cost-rows";
import { stepRows } from "../step-rows";

type SideBySideProps = {
  readonly kind: KindAnswer;
  readonly ground: CushionGround;
  readonly replacement: UnitPrices;
  /** what the figures leave out */
  readonly without: readonly string[];
  readonly shop: MoneyAndMass;
};

/** All ways to pack a parcel side by side, what each takes, and which postage step it pays. */
export function SideBySide({ kind: { costs }, ground, replacement, without, shop }: SideBySideProps) {
  if (costs.length === 0) return null;
  const columns = costs.map(({ way }) => styleTitle(way.style));
  const names = new Map([...ground.supplies, ...ground.zones].map((each) => [each.id, each.name]));
  const supplyOf = (supplyId: string) => {
    const supply = ground.supplies.find((each) => each.id === supplyId);
    return {
      name: supply?.name ?? supplyId,
      amount: (units: number) => formatAmount(amountOfUnits(units), supply?.useUnit ?? "each"),
    };
  };
  const isGuess = costs.some(({ way }) => way.weight?.guess === true);
  return (
    <>
      <Section
        title="Side by side"
        aside={
          isGuess
            ? "The weight of a style with fewer than five weighed parcels is a guess by the bill."
            : "Weights learned from what your parcels weighed."
        }
      >
        {without.map((words) => (
          <p key={words}>{words}</p>
        ))}
        <RowsTable caption="One parcel" head="Part" columns={columns} rows={costRows(costs, names, shop)} />
        <details className={styles.more}>
          <summary>What each takes, line by line</summary>
          <RowsTable
            caption="Supplies at the price of buying them again"
            head="Supply"
            columns={columns}
            rows={billRows(costs, replacement, supplyOf, shop)}
          />
        </details>
      </Section>
      {costs.every(({ postage }) => postage === null) ? null : (
        <Section title="Which postage step it pays, of 100 such parcels">
          <RowsTable
            caption="Chance of each step, and what it costs on average over your zones"
            head="Step"
            columns={columns}
            rows={stepRows(costs, shop)}
          />
        </Section>
      )}
    </>
  );
}
