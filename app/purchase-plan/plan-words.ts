import type { BlockingLimit } from "#lib/purchasing/plan/blocking-limits";
import type { HeuristicWhy } from "#lib/purchasing/plan/heuristic-why";
import type { PurchasePlan } from "#lib/purchasing/plan/purchase-plan";
import type { NotPlanned } from "#lib/purchasing/week-plan/week-plan-input";
import { addDays, type Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";

type InMoney = (minor: number) => string;
type NameOf = (id: string) => string;

const DAYS_A_WEEK = 7;
const PER_CENT = 100;
const TENTHS = 10;

/**
 * What the plan comes to, in a sentence.
 *
 * @param plan the plan
 * @param frame the day it is for, and money in words
 * @example planSum(plan, frame) // "2 orders for $132.40 with delivery; as use is expected, the next in the week from 14 Dec."
 */
export function planSum(plan: PurchasePlan, { today, inMoney }: { today: Day; inMoney: InMoney }): string {
  const now = plan.orders.filter(({ week }) => week === 0);
  const [next] = plan.orders.filter(({ week }) => week > 0);
  const sum = now.reduce((all, order) => all + order.goodsMinor + order.deliveryMinor, 0);
  const orders = now.length === 1 ? "One order" : `${now.length} orders`;
  const later =
    next === undefined
      ? "none after that for 13 weeks"
      : `as use is expected, the next in the week from ${formatDay(addDays(today, next.week * DAYS_A_WEEK))}`;
  return now.length === 0
    ? `Nothing needs to be ordered this week; ${later}.`
    : `${orders} for ${inMoney(sum)} with delivery; ${later}.`;
}

/**
 * How good the plan is known to be.
 *
 * @param plan the plan
 * @returns a sentence
 * @example proofWords(plan) // "Worked out for all suppliers and 13 weeks together: no plan is cheaper."
 */
export function proofWords({ proof, from, why }: PurchasePlan): string {
  const isTogether = from === "solver" || why?.kind === "spared";
  if (!isTogether) return `By rule of thumb: ${whyWords(why)}${gapWords(proof.gap)}`;
  const together = "Worked out for all suppliers and 13 weeks together";
  return `${together}${proof.proven ? "" : ", stopped after its time"}${gapWords(proof.gap)}`;
}

function gapWords(gap: number | null): string {
  if (gap === null) return "; how much cheaper a plan could be is not known.";
  const percent = Math.ceil(gap * PER_CENT * TENTHS) / TENTHS;
  return gap <= ROUNDING ? ": no plan is cheaper." : `; no plan is more than ${percent} % cheaper.`;
}

/** Sums of a solver may be off by such a share. */
const ROUNDING = 1e-6;

function whyWords(why: HeuristicWhy | null): string {
  switch (why?.kind) {
    case "failed":
      return `the solver failed (${why.message})`;
    case "unsound":
      return "what the solver found does not keep every limit";
    case "no-time":
    case "spared":
    case "stopped":
    case undefined:
      return "the solver found nothing better in its time";
    default:
      return why satisfies never;
  }
}

/**
 * The limits that stand in the way of a plan, and the least that would help.
 *
 * @param limits what the plan named
 * @param frame the day, money and names in words
 * @returns a sentence for each
 */
export function limitWords(
  limits: readonly BlockingLimit[],
  { today, inMoney, nameOf }: { today: Day; inMoney: InMoney; nameOf: NameOf },
): string[] {
  return limits.map((limit) => {
    switch (limit.kind) {
      case "cash": {
        const until = formatDay(addDays(today, (limit.throughWeek + 1) * DAYS_A_WEEK - 1));
        return `${inMoney(limit.limitMinor)} to spend until ${until} is too little: ${inMoney(limit.byMinor)} more would do.`;
      }
      case "room":
        return `${whole(limit.limitLitres)} l of room is too little: ${whole(limit.byLitres)} l more would do.`;
      case "least-order":
        return `${nameOf(limit.supplierId)} takes no order under ${inMoney(limit.limitMinor)}: ${inMoney(limit.byMinor)} less would do.`;
      case "most-stock":
        return `${nameOf(limit.supplyId)}: a pack lasts longer than you want to keep; ${whole(limit.byUnits)} more on the shelf would do.`;
      default:
        return limit satisfies never;
    }
  });
}

function whole(value: number): string {
  return String(Math.ceil(value));
}

/**
 * Which supplies the plan leaves out, and why.
 *
 * @param notPlanned supplies without a place in the plan
 * @param nameOf a supply's name
 * @returns a sentence for each reason that concerns what is used
 */
export function notPlannedWords(notPlanned: readonly NotPlanned[], nameOf: NameOf): string[] {
  const named = (why: NotPlanned["why"]) =>
    notPlanned.filter((each) => each.why === why).map(({ supplyId }) => nameOf(supplyId));
  const said = (names: readonly string[], words: string) =>
    names.length === 0 ? [] : [`${names.join(", ")}: ${words}.`];
  return [
    ...said(named("not-counted"), "not in the plan until counted"),
    ...said(named("no-offer"), "not in the plan, as nobody is known to sell it"),
    ...said(named("no-price"), "not in the plan, as no price is known"),
  ];
}
