import type { CountCorrection } from "#lib/forecast/count-correction";
import { FIRST_WEEKS_METHOD } from "#lib/forecast/shop/first-weeks-outlook";
import { dispersionOver } from "#lib/forecast/sum-spread";
import type { WeekUse } from "#lib/forecast/weekly-use";
import type { ExplanationLine } from "#lib/replenishment/check-row";
import { forecastWords } from "#lib/replenishment/forecast-words";
import { arrivalBy } from "#lib/replenishment/lead-time/arrival-chances";
import type { LatenessBelief } from "#lib/replenishment/lead-time/lateness-belief";
import type { ProtectionPlan } from "#lib/replenishment/protection-plan";
import { safetyStock, serviceFactor } from "#lib/replenishment/safety-stock";
import { cyclesPerShortage } from "#lib/replenishment/service-goal";
import { type Amount, amount, amountOfUnits } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";

const WEEKS_SHOWN = 13;
const DAYS_A_WEEK = 7;
/** A delivery that is later than this is rare. */
const SURELY = 0.9;

/** What an explanation is written from. */
export type ExplanationQuestion = {
  readonly unit: UseUnit;
  readonly plan: ProtectionPlan;
  /** recorded use a week, oldest first */
  readonly weeks: readonly WeekUse[];
  readonly correction: CountCorrection;
  readonly onHand: Amount | null;
  readonly countedOn: Day | null;
  readonly onOrder: Amount;
  /** on hand and what comes within the protection interval; null when never counted */
  readonly position: Amount | null;
  readonly today: Day;
  readonly supplierName: string | null;
};

/**
 * Explanation of a row: each step from the weekly use to the reorder point, so that a person can follow it, and the
 * textbook's way beside it, to be done by hand.
 *
 * @param question the row's parts
 * @returns steps in the order of the reckoning
 */
export function explanation(question: ExplanationQuestion): ExplanationLine[] {
  const { unit, plan, onHand, position } = question;
  const booked = (parts: number): string => formatAmount(amount(Math.round(parts)), unit);
  const reckoned = (parts: number): string => formatEstimate(amount(Math.round(parts)), unit);
  return [
    ...usedLines(question, booked),
    {
      label: "Use a week",
      value: reckoned(plan.usePerWeek),
      note: `${forecastWords(plan.forecast)}; season and planned events of the days counted in. How it was chosen stands under Outlook.`,
    },
    leadTimeLine(question),
    ...reorderLines(plan, reckoned),
    textbookLine(plan, reckoned),
    {
      label: "Position",
      value: position === null ? "not known" : booked(position),
      note: onHand === null ? "Never counted." : positionWords(question, booked),
    },
  ];
}

function leadTimeLine({ plan, today, supplierName }: ExplanationQuestion): ExplanationLine {
  const { delivery, arrivals, leadTimeDays, interval } = plan;
  const late = daysBetween(today, arrivalBy(arrivals, SURELY));
  const from = supplierName === null ? "assumed, there is no offer" : supplierName;
  const kept = keptWords(delivery.belief);
  return {
    label: "Lead time",
    value: late > leadTimeDays ? `${leadTimeDays} to ${late} days` : `${leadTimeDays} days`,
    note:
      `As a rule, and with 9 chances in 10: ${from}, ${delivery.terms.promisedDays} ` +
      `${delivery.terms.inWorkingDays ? "working days" : "days"} promised. ${kept} ` +
      `An order placed at the next check, ${formatDay(plan.nextCheck)}, comes about ${formatDay(interval.until)}.`,
  };
}

function keptWords({ deliveries, promiseShare }: LatenessBelief): string {
  if (deliveries === 0) return "How it keeps its promise is a guess until deliveries are recorded.";
  const own = Math.round((1 - promiseShare) * 100);
  const counted = deliveries === 1 ? "one own delivery counts" : `${deliveries} own deliveries count`;
  return `How late it may be: ${counted} ${own} %, the promise the rest.`;
}

function reorderLines(plan: ProtectionPlan, text: AmountText): ExplanationLine[] {
  const { unseenUse, expectedUse, reorderPoint } = plan;
  return [
    {
      label: "Expected use",
      value: text(expectedUse),
      note:
        `${text(expectedUse - unseenUse)} from the order until its delivery, and ${text(unseenUse)} before: stock is looked at ` +
        "from time to time only, so it is below the reorder point when the order goes out.",
    },
    { label: "Typical error", value: text(plan.deviation), note: spreadWords(plan, text) },
    { label: "Reorder point", value: text(reorderPoint), note: goalWords(plan) },
    {
      label: "Safety stock",
      value: text(plan.safetyStock),
      note: `${text(reorderPoint)} less the expected ${text(expectedUse)}.`,
    },
  ];
}

/** What the reorder point promises, in the words of the goal. */
function goalWords({ goal, cycleLevel, filledShare }: ProtectionPlan): string {
  const cycles = `in ${rounded(cycleLevel * 100, 1)} of 100 order cycles it lasts until the delivery`;
  const filled = `${rounded(filledShare * 100, 1)} of 100 needed are there`;
  return goal.kind === "cycles"
    ? `The least with which stock runs out at most once in ${cyclesPerShortage(goal.level)} order cycles: ${cycles}; ${filled}.`
    : `The least with which ${rounded(goal.level * 100, 1)} of 100 needed are filled from stock: ${filled}; ${cycles}.`;
}

function textbookLine(plan: ProtectionPlan, text: AmountText): ExplanationLine {
  const { intervalUse, intervalDeviation, interval, goal } = plan;
  const factor = serviceFactor(goal.level);
  return {
    label: "By the textbook",
    value: text(intervalUse + safetyStock(factor, intervalDeviation)),
    note:
      `To compare: the use over the ${interval.days} days of review period and lead time, as errors were normal: ` +
      `${text(plan.usePerWeek)} × ${plan.openDays} ÷ 7 = ${text(intervalUse)}, + ${rounded(factor, 2)} × ${text(intervalDeviation)}.`,
  };
}

type AmountText = (parts: number) => string;

function usedLines({ weeks, correction }: ExplanationQuestion, text: AmountText): ExplanationLine[] {
  const open = weeks.filter((week) => !week.closed).slice(-WEEKS_SHOWN);
  const used: ExplanationLine[] =
    open.length > 0
      ? [
          {
            label: "Used in the last weeks",
            value: open.map((week) => text(week.amount)).join(", "),
            note: "Oldest first, full weeks only; weeks mostly closed are left out.",
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
        "Each week is multiplied by this; it is held between 0.5 and 2. Counts of this week count from the next one on.",
    },
  ];
}

/** The error in figures: uses come by the parcel, past forecasts were off by a share, deliveries vary. */
function spreadWords({ forecast: { spread, method }, openDays }: ProtectionPlan, text: AmountText): string {
  const k = dispersionOver(spread.dispersions, Math.max(1, openDays) / DAYS_A_WEEK);
  const seen =
    method === FIRST_WEEKS_METHOD
      ? "a guess while there are few weeks"
      : "by what past forecasts of such sums were off";
  return (
    `Of how deliveries vary, of how much one parcel takes (about ${text(amountOfUnits(spread.perUse))}) and of how ` +
    `far sums are off: ${rounded(Math.sqrt(k) * 100, 1)} % of the use over ${openDays} days, ${seen}.`
  );
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

function rounded(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}
