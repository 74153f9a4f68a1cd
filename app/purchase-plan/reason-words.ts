import type { PlanReason } from "#lib/purchasing/plan/plan-reasons";
import type { CheckRow } from "#lib/replenishment/weekly-check";
import { addDays, type Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

/** What reasons are said with. */
export type ReasonWordsFrame = {
  readonly today: Day;
  readonly row: Pick<CheckRow, "action" | "orderByDate"> | undefined;
  readonly inMoney: (minor: number) => string;
  readonly nameOf: (supplyId: string) => string;
};

const DAYS_A_WEEK = 7;

/**
 * Why a line is in the plan, in words that can follow its price: that it is needed, and why more of it; else what it
 * rides along for, and when it would be due by itself.
 *
 * @param reasons the plan's reasons, the weightiest first
 * @param frame the day, the supply's row of the check, money and names
 * @returns a phrase without its full stop
 * @example reasonWords([{ kind: "free-delivery", fromMinor: 9000, savesMinor: 895 }], frame)
 * // "rides along for free delivery, which saves $8.95"
 */
export function reasonWords(reasons: readonly PlanReason[], frame: ReasonWordsFrame): string {
  const isNeeded = reasons.some(({ kind }) => kind === "needed");
  const due = reasons.find((reason) => reason.kind === "shares-delivery");
  const others = reasons.filter(({ kind }) => kind !== "needed" && kind !== "shares-delivery");
  const parts = others.map((reason) => forWords(reason, frame));
  if (isNeeded) return [neededWords(frame.row), ...parts.map((words) => `more of it ${words}`)].join("; ");
  const dueWords =
    due === undefined
      ? []
      : [`due by itself in the week from ${formatDay(addDays(frame.today, due.neededWeek * DAYS_A_WEEK))}`];
  const rides = parts.length === 0 ? ["rides along"] : [`rides along ${parts.join(" and ")}`];
  return [...rides, ...dueWords].join("; ");
}

function forWords(reason: PlanReason, { inMoney, nameOf }: ReasonWordsFrame): string {
  switch (reason.kind) {
    case "price-step":
      return `for the price from ${reason.fromPacks} packs on, ${inMoney(reason.priceMinor)} a pack`;
    case "free-delivery":
      return `for free delivery, which saves ${inMoney(reason.savesMinor)}`;
    case "least-order":
      return `for the ${inMoney(reason.leastMinor)} that the supplier asks for at least`;
    case "substitute":
      return `to stand in for ${nameOf(reason.forSupplyId)}`;
    case "worth-keeping":
      return "as it is cheap now and used later";
    case "needed":
    case "shares-delivery":
      throw new RangeError(`forWords requires a reason for more, got ${reason.kind}`);
    default:
      return reason satisfies never;
  }
}

function neededWords(row: ReasonWordsFrame["row"]): string {
  const isDue = row?.action === "order-today" || row?.action === "order-this-week";
  if (!isDue) return "needed before the next check can order it";
  return row.action === "order-today" || row.orderByDate === null
    ? "needed: order today"
    : `needed: order by ${formatDay(row.orderByDate, { weekday: true })}`;
}
