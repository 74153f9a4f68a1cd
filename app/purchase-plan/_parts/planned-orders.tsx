import type { Day } from "#lib/units/day";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { PlaceOrders } from "../../this-week/_parts/place-orders";
import type { ThisWeekFacts } from "../../this-week/this-week-on";
import type { AskedAim } from "../plan-aim";
import { PlanAbove } from "./plan-above";
import { PlanChoices } from "./plan-choices";
import { PlanFacts } from "./plan-facts";

type PlannedOrdersProps = {
  readonly facts: ThisWeekFacts;
  readonly today: Day;
  /** The day that the address asked for, if it did. */
  readonly asked: Day | null;
  readonly aim: AskedAim;
  /** The sum in the address, as typed. */
  readonly sum: string;
  readonly shop: Pick<Shop, "currency" | "minorDigits">;
};

/** The orders of this week by the plan over all suppliers, what it comes to, and what else it could look for. */
export function PlannedOrders({ facts, today, asked, aim, sum, shop }: PlannedOrdersProps) {
  const { plan, check, notPlanned, drafts, supplierNames } = facts;
  if (check.rows.length === 0 || plan.kind === "nothing") return null;
  const inMoney = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const supplies = new Map(check.rows.map((row) => [row.supplyId, row.supply]));
  const nameOf = (id: string) => supplies.get(id) ?? supplierNames.get(id) ?? id;
  const made = plan.kind === "ready" && plan.answer.kind === "plan" ? plan.answer.plan : null;
  const problem =
    aim.unreadable === null
      ? undefined
      : `“${aim.unreadable}” can't be read as a sum. Write it like 60 or 59.50.`;
  return (
    <PlaceOrders
      drafts={drafts}
      rows={check.rows}
      day={today}
      asked={asked}
      shop={shop}
      above={
        <PlanAbove plan={plan} notPlanned={notPlanned} today={today} inMoney={inMoney} nameOf={nameOf} />
      }
      below={
        <>
          {made === null ? null : (
            <PlanFacts plan={made} today={today} inMoney={inMoney} supplierOf={nameOf} />
          )}
          <PlanChoices aim={aim.aim} sum={sum} problem={problem} asked={asked} currency={shop.currency} />
        </>
      }
    />
  );
}
