import Link from "next/link";
import { Section } from "../../_parts/section";
import type { FirstStep } from "../first-steps";
import styles from "./setup.module.css";

/** The first ten minutes of a shop; gone once every step is done. */
export function FirstSteps({ steps }: { readonly steps: readonly FirstStep[] }) {
  const next = steps.find((step) => !step.isDone);
  if (next === undefined) return null;
  return (
    <Section title="The first ten minutes" rule="strong">
      <ol className={styles.steps}>
        {steps.map((step) => (
          <li key={step.href} className={step.isDone ? styles.done : undefined}>
            {step.isDone ? (
              `Done: ${step.words}`
            ) : (
              <Link href={step.href} aria-current={step === next ? "step" : undefined}>
                {step.words}
              </Link>
            )}
          </li>
        ))}
      </ol>
    </Section>
  );
}
