import type { CountCorrection } from "#lib/forecast/count-correction";
import type { ForecastMethod } from "#lib/forecast/forecast-method";
import type { UsageHistory } from "#lib/forecast/usage-history";
import type { ExplanationLine } from "#lib/replenishment/check-row";
import type { PlanMethod, ProtectionPlan } from "#lib/replenishment/protection-plan";
import { type Amount, amount } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";

/** What an explanation is written from. */
export type ExplanationQuestion = {
  readonly unit: UseUnit;
  readonly plan: ProtectionPlan;
  readonly history: UsageHistory;
  readonly correction: CountCorrection;
  readonly onHand: Amount | null;
  readonly countedOn: Day | null;
  readonly onOrder: Amount;
  /** on hand and what comes within the protection interval; null when never counted */
  readonly position: Amount | null;
  readonly serviceLevel: number;
  readonly reviewDays: number;
  readonly today: Day;
  readonly supplierName: string | null;
};

/**
 * Explanation of a row: each step from the weekly use to the reorder point, so that a person can do it
 * again by hand.
 *
 * @param question the row's parts
 * @returns steps in the order of the reckoning
 */
export function explanation(question: ExplanationQuestion): ExplanationLine[] {
  const { unit, plan, onHand, position, serviceLevel, reviewDays, today } = question;
  const booked = (parts: number): string => formatAmount(amount(Math.round(parts)), unit);
  const reckoned = (parts: number): string => formatEstimate(amount(Math.round(parts)), unit);
  const supplier =
    question.supplierName === null ? "assumed, there is no offer" : `from ${question.supplierName}`;
  const until = formatDay(plan.interval.until);
  return [
    ...usedLines(question, booked),
    {
      label: "Use a week",
      value: reckoned(plan.usePerWeek),
      note: `${methodWords(plan.method)}${methodReason(plan.method, reckoned)}`,
    },
    {
      label: "Protection interval",
      value: `${plan.interval.days} days`,
      note:
        `Lead time of ${plan.leadTimeDays} days (${supplier}) and ${reviewDays} days to the next check: ` +
        `an order placed then comes ${until}. From ${formatDay(today)} that makes ${plan.openDays} open days.`,
    },
    {
      label: "Expected use",
      value: reckoned(plan.expectedUse),
      note: `${reckoned(plan.usePerWeek)} a week × ${plan.openDays} ÷ 7.`,
    },
    { label: "Typical error", value: reckoned(plan.spread.deviation), note: spreadWords(plan) },
    {
      label: "Service level",
      value: `${rounded(serviceLevel * 100, 1)} %`,
      note: `${rounded(plan.spread.factor, 2)} typical errors are kept beside the expected use.`,
    },
    {
      label: "Safety stock",
      value: reckoned(plan.safetyStock),
      note: `${rounded(plan.spread.factor, 2)} × ${reckoned(plan.spread.deviation)}.`,
    },
    {
      label: "Reorder point",
      value: reckoned(plan.reorderPoint),
      note: `${reckoned(plan.expectedUse)} expected and ${reckoned(plan.safetyStock)} safety stock.`,
    },
    {
      label: "Position",
      value: position === null ? "not known" : booked(position),
      note: onHand === null ? "Never counted." : positionWords(question, booked),
    },
  ];
}

type AmountText = (parts: number) => string;

function usedLines({ history, correction }: ExplanationQuestion, text: AmountText): ExplanationLine[] {
  const used: ExplanationLine[] =
    history.kind === "weeks"
      ? [
          {
            label: "Used in the last weeks",
            value: history.values.slice(-13).map(text).join(", "),
            note: "Oldest first, full weeks only, from the week of the first use; weeks mostly closed are left out.",
          },
        ]
      : [];
  if (correction.kind === "none") {
    return used;
  }
  const { factor, differenceSum, recordedUse, differences } = correction;
  const found =
    differenceSum <= 0 ? `${text(-differenceSum)} missing` : `${text(differenceSum)} more than booked`;
  return [
    ...used,
    {
      label: "Corrected by counts",
      value: `× ${rounded(factor, 2)}`,
      note:
        `${differences} counts in 26 weeks found ${found} beside ${text(recordedUse)} recorded. ` +
        "Each week above is multiplied by this; it is held between 0.5 and 2.",
    },
  ];
}

/**
 * Words for how the use a week was found.
 *
 * @param method of a plan
 * @returns a phrase that can begin a sentence
 * @example methodWords({ kind: "first-days", days: 3 }) // "Use of the first 3 days, taken to a week"
 */
export function methodWords(method: PlanMethod): string {
  switch (method.kind) {
    case "first-days":
      return `Use of the first ${method.days} ${method.days === 1 ? "day" : "days"}, taken to a week`;
    case "rarely-used":
      return `Use of the last ${weeksWords(method.method.window)}, spread evenly`;
    case "too-few-weeks":
      return `Average of all there is, ${weeksWords(method.method.window)}`;
    case "compared":
    case "too-few-to-compare":
      return averageWords(method.method);
    default:
      return method satisfies never;
  }
}

function averageWords({ kind, window }: ForecastMethod): string {
  return kind === "simple"
    ? `Average of the last ${weeksWords(window)}`
    : `Weighted average of the last ${weeksWords(window)}, the newest heaviest`;
}

function methodReason(method: PlanMethod, text: AmountText): string {
  switch (method.kind) {
    case "compared": {
      const list = method.tried
        .map((tried) => `${tried.kind} ${tried.window} weeks ${text(tried.meanAbsoluteError)}`)
        .join(", ");
      return `. The simplest that is no worse than the best within its noise. Mean error over the interval: ${list}.`;
    }
    case "too-few-to-compare":
      return ". The records are too short to compare averages.";
    case "rarely-used":
      return ". Nothing was used in the last weeks, which does not mean that nothing will be.";
    case "too-few-weeks":
    case "first-days":
      return ". A guess until there are 4 weeks.";
    default:
      return method satisfies never;
  }
}

function spreadWords({ spread, openDays }: ProtectionPlan): string {
  const weeks = rounded(openDays / 7, 2);
  switch (spread.kind) {
    case "backtest":
      return `Root mean square of ${spread.seen} past errors of the forecast of ${weeks} weeks together.`;
    case "short-history":
      return (
        `From how ${spread.seen} weeks varied: s × √(L + L² ÷ n), L = ${weeks} weeks, n weeks averaged; ` +
        "the factor is Student's t, as so few weeks say little of the spread."
      );
    case "one-week":
      return `A guess: one week shows no spread, so it is taken to vary by as much as it is, over ${weeks} weeks.`;
    default:
      return spread.kind satisfies never;
  }
}

function positionWords(question: ExplanationQuestion, text: AmountText): string {
  const { onHand, countedOn, onOrder, position } = question;
  const counted = countedOn === null ? "" : `, last counted ${formatDay(countedOn)}`;
  const soon = (position ?? 0) - (onHand ?? 0);
  const later = onOrder - soon;
  return (
    `${text(onHand ?? 0)} on hand${counted}, ${text(soon)} on order within the interval` +
    `${later > 0 ? `; another ${text(later)} after it` : ""}.`
  );
}

function weeksWords(weeks: number): string {
  return weeks === 1 ? "1 week" : `${weeks} weeks`;
}

function rounded(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}
