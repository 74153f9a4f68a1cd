import Link from "next/link";
import type { CartonChoice } from "#lib/cartons/choice/carton-choice";
import { formatMass, milligrams } from "#lib/units/mass";
import { formatMoney } from "#lib/units/money";
import { PlacementPicture } from "../../_parts/placement-picture";
import {
  choiceReason,
  cutWords,
  heightText,
  leftOutWords,
  type ShopWords,
  valueText,
} from "../../choice-words";
import { choiceSum } from "../choice-sum";
import type { FitAnswer } from "../fit-answer";
import styles from "./fit.module.css";

type FitChoicesProps = {
  readonly answer: Extract<FitAnswer, { readonly kind: "answered" }>;
  readonly nameOf: (cartonId: string) => string;
  /** false: its price is not known, and it counts as costing nothing */
  readonly isPriced: (cartonId: string) => boolean;
  readonly shop: ShopWords;
};

/** At most three cartons, each with its reason, what it comes to, and where the pieces stand. */
export function FitChoices({ answer, nameOf, isPriced, shop }: FitChoicesProps) {
  const { answers, leftOut } = answer.choices;
  return (
    <>
      <ul className={styles.answers}>
        {answers.map((choice) => (
          <li key={choice.carton.id} className={styles.answer}>
            <h2>
              <Link href={`/cartons/${encodeURIComponent(choice.carton.id)}`}>
                {nameOf(choice.carton.id)}
              </Link>
            </h2>
            <p>{choiceReason(choice, shop)}</p>
            <ChoiceSum choice={choice} isPriced={isPriced(choice.carton.id)} shop={shop} />
            <PlacementPicture {...placed(choice)} />
          </li>
        ))}
      </ul>
      {answer.doubleBox === null ? null : (
        <p>
          As a box in a box: {nameOf(answer.doubleBox.inner.carton.id)} inside{" "}
          {nameOf(answer.doubleBox.outer.carton.id)}, {valueText(answer.doubleBox.totalValue, shop)} together
          with the fill of both{answer.doubleBox.outer.cost.postageValue === null ? "" : " and postage"}.
        </p>
      )}
      {leftOut.length === 0 ? null : (
        <>
          <h2>Not offered</h2>
          <ul>
            {leftOut.map(({ cartonId, reason }) => (
              <li key={cartonId}>
                {nameOf(cartonId)}: {leftOutWords(reason, shop)}.
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

type ChoiceSumProps = {
  readonly choice: CartonChoice;
  readonly isPriced: boolean;
  readonly shop: ShopWords;
};

function ChoiceSum({ choice, isPriced, shop }: ChoiceSumProps) {
  const stock = choice.stock === "countFirst" ? "count first" : `${choice.carton.onHand ?? 0} there`;
  const { carton, fill, tape, postage, minutes, together } = choiceSum(choice);
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  return (
    <dl className={styles.sum}>
      <dt>Carton</dt>
      <dd>
        {isPriced ? money(carton) : "price not known, counted as nothing"}, {stock}
      </dd>
      <dt>Fill</dt>
      <dd>{money(fill)}</dd>
      <dt>Tape</dt>
      <dd>{money(tape)}</dd>
      {postage === null ? null : (
        <>
          <dt>Postage</dt>
          <dd>
            {money(postage.minor)} at about{" "}
            {formatMass(milligrams(Math.round(postage.massMg)), shop.measures)}
          </dd>
        </>
      )}
      {minutes === null ? null : (
        <>
          <dt>Your time</dt>
          <dd>{money(minutes)}</dd>
        </>
      )}
      <dt>Together</dt>
      <dd>
        <strong>{money(together)}</strong>
      </dd>
      {choice.why !== "cutDown" && choice.cut !== null ? (
        <>
          <dt>Cut down</dt>
          <dd>
            to {heightText(choice.cut, shop)}: {cutWords(choice.cut, shop)}
          </dd>
        </>
      ) : null}
    </dl>
  );
}

function placed(choice: CartonChoice) {
  if (choice.why !== "cutDown") return { inside: choice.carton.inside, placement: choice.placement };
  const inside = { ...choice.carton.inside, heightUm: choice.cut.heightUm };
  return { inside, placement: choice.cut.placement };
}
