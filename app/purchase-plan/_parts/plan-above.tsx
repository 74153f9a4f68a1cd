import type { NotPlanned } from "#lib/purchasing/week-plan/week-plan-input";
import type { Day } from "#lib/units/day";
import { Message } from "../../_parts/message";
import { limitWords, notPlannedWords, planSum } from "../plan-words";
import type { WantedPlan } from "../wanted-plan";
import { PlanWaiting } from "./plan-waiting";

type PlanAboveProps = {
  readonly plan: WantedPlan;
  readonly notPlanned: readonly NotPlanned[];
  readonly today: Day;
  readonly inMoney: (minor: number) => string;
  /** name of a supply or a supplier */
  readonly nameOf: (id: string) => string;
};

/** What the plan comes to, or why there is none yet; and what it leaves out. */
export function PlanAbove({ plan, notPlanned, today, inMoney, nameOf }: PlanAboveProps) {
  return (
    <>
      <PlanState plan={plan} today={today} inMoney={inMoney} nameOf={nameOf} />
      {notPlannedWords(notPlanned, nameOf).map((words) => (
        <p key={words}>{words}</p>
      ))}
    </>
  );
}

function PlanState({ plan, today, inMoney, nameOf }: Omit<PlanAboveProps, "notPlanned">) {
  switch (plan.kind) {
    case "nothing":
      return null;
    case "working":
      return <PlanWaiting question={plan.question} />;
    case "failed":
      return (
        <Message kind="note" title="The plan over all suppliers could not be worked out.">
          {plan.message}. Each supply is ordered by itself below. Load the screen again in a minute to try
          once more.
        </Message>
      );
    case "ready": {
      const { answer } = plan;
      if (answer.kind === "plan") return <p>{planSum(answer.plan, { today, inMoney })}</p>;
      const limits = limitWords(answer.limits, { today, inMoney, nameOf });
      return (
        <Message kind="note" title="Your limits leave some need unmet.">
          {limits.length === 0 ? "Which of them could not be named in time." : limits.join(" ")}{" "}
          {answer.nearest === null
            ? "No order is possible within them."
            : `Within them: ${planSum(answer.nearest, { today, inMoney })}`}
        </Message>
      );
    }
    default:
      return plan satisfies never;
  }
}
