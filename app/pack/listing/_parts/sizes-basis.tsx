import Link from "next/link";
import type { Habits } from "#lib/packing/habits";
import { formatMass, milligrams } from "#lib/units/mass";
import { DraftedSteps } from "../../../recipes/[id]/draft/_parts/drafted-steps";
import { acceptable, leftOutWords, tightWords } from "../../../recipes/[id]/draft/draft-words";
import type { PackingChoices } from "../../packing-choices";
import type { SizesAnswer } from "../sizes-answer";
import type { SizesQuestion } from "../sizes-question";
import { takenAsWords } from "../taken-as-words";
import styles from "./listing.module.css";

type SizesBasisProps = {
  readonly question: SizesQuestion;
  readonly draft: Extract<SizesAnswer, { readonly kind: "answered" }>["draft"];
  readonly choices: PackingChoices;
  readonly habits: Habits;
  /** What stands in the address. */
  readonly typed: Readonly<Record<string, string>>;
};

/** Smaller cartons that could be taken, and what the guess from sizes is made of: what the piece was taken for, the drafted card, and what was left out. */
export function SizesBasis({ question, draft, choices, habits, typed }: SizesBasisProps) {
  const { recipe, carton } = draft;
  const { measures } = choices;
  const nameOf = (id: string) => choices.supplies.find((supply) => supply.id === id)?.name ?? id;
  const leftOut = leftOutWords(recipe.leftOut);
  return (
    <>
      {acceptable(draft.tight).map((each) => (
        <p key={each.cartonId} className={styles.near}>
          {tightWords(each, nameOf, measures)}{" "}
          <Link href={`/pack/listing?${new URLSearchParams({ ...typed, carton: each.cartonId })}`}>
            Promise it in {nameOf(each.cartonId)}
          </Link>
        </p>
      ))}
      <details className={styles.basis}>
        <summary>How this guess was made</summary>
        <p>{takenAsWords(question, draft, nameOf, measures)}</p>
        <p>
          By this card {formatMass(recipe.mass.mg, measures)}: the bare weight, the materials below, the
          carton
          {carton.massMg === null ? "" : ` of ${formatMass(milligrams(carton.massMg), measures)}`} and{" "}
          {formatMass(milligrams(habits.papersMg), measures)} of papers.
          {recipe.mass.guessed.length === 0
            ? ""
            : ` Never weighed, so reckoned from its board: ${recipe.mass.guessed.map(nameOf).join(", ")}. Weigh one and write it down under Supplies.`}
        </p>
        {leftOut === null ? null : <p>{leftOut}</p>}
        <DraftedSteps steps={recipe.steps} nameOf={nameOf} />
      </details>
    </>
  );
}
