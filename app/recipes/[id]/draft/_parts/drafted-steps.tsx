import Link from "next/link";
import type { DraftedStep } from "#lib/packing/recipe/drafted-step";
import styles from "./draft.module.css";

type DraftedStepsProps = {
  readonly steps: readonly DraftedStep[];
  readonly nameOf: (supplyId: string) => string;
};

/** The steps of a draft in packing order: what is done, how much is taken, and how that was reckoned. */
export function DraftedSteps({ steps, nameOf }: DraftedStepsProps) {
  return (
    <ol className={styles.steps}>
      {steps.map((step) => (
        <li key={step.id} className={styles.step}>
          <span className={styles.number}>{step.position}</span>
          <span className={styles.words}>
            {step.words}
            <span className={styles.small}>
              <Link href={`/supplies/${step.supplyId}`}>{nameOf(step.supplyId)}</Link>
              {step.per === "parcel" ? ", once a parcel" : ", each piece"}
            </span>
          </span>
          <span className={styles.amount}>{step.used}</span>
          <span className={styles.why}>
            {step.guessed ? <em>A guess. </em> : null}
            {step.reason}
          </span>
        </li>
      ))}
    </ol>
  );
}
