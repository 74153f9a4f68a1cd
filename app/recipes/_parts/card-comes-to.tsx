import type { CardSum } from "#lib/packing/card-sum";
import { formatAmount } from "#lib/units/amount-text";
import { costWords } from "../cost-words";
import type { LiveSum, SumGround } from "../live-sum";
import { massWords } from "../mass-words";
import { rowsWords } from "../problem-rows";
import { styleTitle } from "../style-title";
import { sumWords } from "../sum-words";
import styles from "./card-comes-to.module.css";
import { SumTable } from "./sum-table";

type CardComesToProps = {
  readonly live: LiveSum;
  readonly ground: SumGround;
  readonly money: { readonly currency: string; readonly minorDigits: number };
};

/** What the card comes to as it is typed: in a sentence, beside the other cards, and supply by supply. */
export function CardComesTo({ live, ground, money }: CardComesToProps) {
  const { sum, bill, inUse, others, without } = live;
  const shop = { ...money, measures: ground.measures };
  const supplyName = (id: string) => ground.supplies.get(id)?.name ?? id;
  const nameOf = (id: string) => (id === ground.itemTypeId ? "the piece itself" : supplyName(id));
  const cards = [
    { name: "As typed", ...sum },
    ...(inUse === null ? [] : [{ name: "The card in use", ...inUse }]),
    ...others.map((other) => ({ name: `${styleTitle(other.style)}, in use`, ...other.sum })),
  ];
  const supplies = bill.map((line) => ({
    ...line,
    name: supplyName(line.supplyId),
    amount: formatAmount(line.amount, ground.supplies.get(line.supplyId)?.useUnit ?? "each"),
  }));
  const tables = { hasTwoPrices: cards.some(hasTwoPrices), shop };
  const isCartonLeftOut = without.some(({ of }) => of === "carton");
  const noCarton = isCartonLeftOut ? "as its row does not count" : "as none is named";
  const short = (card: CardSum) => `${massWords(card.mass, shop.measures)}, ${costWords(card.book, shop)}`;
  const said =
    bill.length === 0
      ? "Type an amount, and its weight and cost stand here."
      : sumWords(sum, nameOf, shop, noCarton);
  const left = without.length === 0 ? null : <strong> Without {rowsWords(without)}.</strong>;
  return (
    <>
      {/* On a phone the sum stands below the rows: this line keeps it in sight. It is said by the section. */}
      <p className={styles.bar} aria-hidden="true">
        As typed <b>{short(sum)}.</b>
        {left}
        {inUse === null ? "" : ` In use ${short(inUse)}.`}
      </p>
      <section className={styles.sum} aria-labelledby="card-comes-to">
        <h2 id="card-comes-to" className={styles.title}>
          What the card comes to
        </h2>
        <p role="status" className={styles.said}>
          {said}
          {left}
        </p>
        {bill.length === 0 ? null : (
          <>
            <SumTable caption="One piece in its parcel" head="Card" lines={cards} {...tables} />
            <SumTable caption="Supply by supply, as typed" head="Supply" lines={supplies} {...tables} />
            {sum.cartons.length > 0 || isCartonLeftOut ? null : (
              <p className={styles.hint}>
                No carton is named: that may be so, and the packer then chooses. Weight and cost are without
                one.
              </p>
            )}
          </>
        )}
        <p className={styles.hint}>
          Today’s masses and prices; bought again is the cheapest pack on offer, without delivery. An
          estimate: send a test parcel.
        </p>
      </section>
    </>
  );
}

function hasTwoPrices({ book, replacement }: CardSum): boolean {
  return book.cost !== replacement.cost || book.unknown.join() !== replacement.unknown.join();
}
