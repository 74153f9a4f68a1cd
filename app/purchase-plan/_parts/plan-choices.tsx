import Link from "next/link";
import type { PlanAim } from "#lib/purchasing/plan/plan-question";
import type { Day } from "#lib/units/day";
import { Button } from "../../_parts/button";
import { Field } from "../../_parts/field";
import styles from "./purchase-plan.module.css";

type PlanChoicesProps = {
  readonly aim: PlanAim;
  readonly sum: string;
  /** why the sum in the address can't be taken */
  readonly problem: string | undefined;
  readonly asked: Day | null;
  readonly currency: string;
};

const AIMS = [
  { kind: "cheapest", words: "Cheapest overall" },
  { kind: "urgent", words: "Only what is urgent" },
  { kind: "least-room", words: "Least room" },
] as const;

/** What the plan should look for: a link each, and a sum to stay within. */
export function PlanChoices({ aim, sum, problem, asked, currency }: PlanChoicesProps) {
  const today = asked === null ? {} : { today: asked };
  return (
    <nav className={styles.choices} aria-label="What the plan looks for">
      <ul className={styles.aims}>
        {AIMS.map(({ kind, words }) => (
          <li key={kind}>
            <Link
              href={`/?${new URLSearchParams({ ...today, ...(kind === "cheapest" ? {} : { aim: kind }) })}#plan`}
              aria-current={aim.kind === kind ? "true" : undefined}
              className={styles.aim}
            >
              {words}
            </Link>
          </li>
        ))}
      </ul>
      <form action="/#plan" className={styles.within}>
        {asked === null ? null : <input type="hidden" name="today" value={asked} />}
        <input type="hidden" name="aim" value="within" />
        <Field
          label={`Within, ${currency}`}
          name="sum"
          defaultValue={sum}
          inputMode="decimal"
          size="short"
          hint="this week’s orders with delivery"
          error={problem}
        />
        <Button type="submit" tone="plain">
          {aim.kind === "within" ? "Stay within this" : "Plan within this"}
        </Button>
      </form>
    </nav>
  );
}
