import type { Comparison } from "#lib/cushioning/comparison";
import type { UnitPrices } from "#lib/cushioning/way-cost";
import { unitWord } from "#lib/units/use-unit";
import type { Supply } from "#prisma/records/supplies";
import { Section } from "../../../_parts/section";
import styles from "../../_parts/paper-or-bubble.module.css";
import { finePrice } from "../../fine-price";
import { type MoneyAndMass, minorText } from "../../why-words";
import { breakEvenWords } from "../break-even-words";
import type { KindDetail } from "../kind-detail";
import { weightStretches } from "../weight-turn-words";
import { CostOverPrice } from "./cost-over-price";
import { CostOverWeightPicture } from "./cost-over-weight-picture";

type WhereItTurnsProps = {
  readonly detail: KindDetail;
  /** supplies whose price may turn the choice */
  readonly tried: readonly Supply[];
  readonly replacement: UnitPrices;
  readonly shop: MoneyAndMass;
};

/** The prices and the weight of the piece at which another way becomes the cheaper one. */
export function WhereItTurns({ detail, tried, replacement, shop }: WhereItTurnsProps) {
  const { kind, overWeight, bareMg } = detail;
  const [nearest] = kind.comparisons;
  if (nearest === undefined) return null;
  const money = (minor: number) => minorText(minor, shop);
  const priced = tried.flatMap((supply) => {
    const priceNow = replacement.get(supply.id) ?? 0;
    return priceNow > 0 ? [{ supply, priceNow }] : [];
  });
  return (
    <>
      {priced.map(({ supply, priceNow }) => (
        <TurningPrice key={supply.id} {...{ detail, nearest, supply, priceNow, shop }} />
      ))}
      {overWeight === null || bareMg === null ? null : (
        <Section
          title={
            overWeight.turns.length === 0
              ? "At no weight of the piece does the choice turn"
              : "The weight of the piece at which the choice turns"
          }
          aside="All else alike: the same wraps, the same carton. Each rise is a step of the rate card, softened by how much parcels differ. A circle: there the choice turns."
        >
          <CostOverWeightPicture over={overWeight} bareMg={bareMg} measures={shop.measures} money={money} />
          <ul className={styles.plan}>
            {weightStretches(overWeight, shop.measures).map(({ style, words }) => (
              <li key={words}>
                {words}: {style} is cheaper
              </li>
            ))}
          </ul>
        </Section>
      )}
    </>
  );
}

type TurningPriceProps = {
  readonly detail: KindDetail;
  readonly nearest: Comparison;
  readonly supply: Supply;
  readonly priceNow: number;
  readonly shop: MoneyAndMass;
};

function TurningPrice({ detail: { kind }, nearest, supply, priceNow, shop }: TurningPriceProps) {
  const price = (value: number) => finePrice(value, shop);
  const words = breakEvenWords(nearest, { ...supply, unit: unitWord(supply.useUnit, 1) }, priceNow, price);
  if (words === null) return null;
  return (
    <Section title={`The price of ${supply.name}`}>
      <p>{words}</p>
      <CostOverPrice {...{ kind, supply, priceNow, price }} money={(minor) => minorText(minor, shop)} />
    </Section>
  );
}
