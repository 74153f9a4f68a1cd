import Link from "next/link";
import type { CartonChoice } from "#lib/cartons/choice/carton-choice";
import { formatMass, milligrams } from "#lib/units/mass";
import { PlacementPicture } from "../../_parts/placement-picture";
import {
  choiceReason,
  cutWords,
  heightText,
  leftOutWords,
  type ShopWords,
  valueText,
} from "../../choice-words";
import type { FitAnswer } from "../fit-answer";
import styles from "./fit.module.css";

type FitChoicesProps = {
  readonly answer: Extract<FitAnswer, { readonly kind: "answered" }>;
  readonly nameOf: (cartonId: string) => string;
  readonly shop: ShopWords;
};

/** At most three cartons, each with its reason, what it comes to, and where the pieces stand. */
export function FitChoices({ answer, nameOf, shop }: FitChoicesProps) {
  const { answers, leftOut } = answer.choices;
  return (
    <>
      <ul className={styles.answers}>
        {answers.map((choice) => (
          <li key={choice.carton.id} className={styles.answer}>
            <h3>
              <Link href={`/cartons/${encodeURIComponent(choice.carton.id)}`}>
                {nameOf(choice.carton.id)}
              </Link>
            </h3>
            <p>{choiceReason(choice, shop)}</p>
            <ChoiceSum choice={choice} shop={shop} />
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
          <h3>Not offered</h3>
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

function ChoiceSum({ choice, shop }: { readonly choice: CartonChoice; readonly shop: ShopWords }) {
  const cost = choice.why === "cutDown" ? choice.cut.cost : choice.cost;
  const stock = choice.stock === "countFirst" ? "count first" : `${choice.carton.onHand ?? 0} there`;
  return (
    <dl className={styles.sum}>
      <dt>Carton</dt>
      <dd>
        {valueText(cost.cartonValue, shop)}, {stock}
      </dd>
      <dt>Fill</dt>
      <dd>{valueText(cost.fillValue, shop)}</dd>
      <dt>Tape</dt>
      <dd>{valueText(cost.tapeValue, shop)}</dd>
      {cost.postageValue === null ? null : (
        <>
          <dt>Postage</dt>
          <dd>
            {valueText(cost.postageValue, shop)} at about{" "}
            {formatMass(milligrams(Math.round(cost.massMg)), shop.measures)}
          </dd>
        </>
      )}
      <dt>Together</dt>
      <dd>
        <strong>{valueText(choice.total.value, shop)}</strong>
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
