import type { CountCorrection } from "#lib/forecast/count-correction";
import { FIRST_WEEKS_METHOD } from "#lib/forecast/shop/first-weeks-outlook";
import { dispersionOver } from "#lib/forecast/sum-spread";
import type { WeekUse } from "#lib/forecast/weekly-use";
import type { ExplanationLine } from "#lib/replenishment/check-row";
import { forecastWords } from "#lib/replenishment/forecast-words";
import type { ProtectionPlan } from "#lib/replenishment/protection-plan";
import { safetyStock, serviceFactor } from "#lib/replenishment/safety-stock";
import { type Amount, amount, amountOfUnits } from "#lib/units/amount";
import { formatAmount, formatEstimate } from "#lib/units/amount-text";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";

const WEEKS_SHOWN = 13;

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
  const { forecast, openDays } = plan;
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
      note: `${forecastWords(forecast)}; season and planned events of the days counted in. How it was chosen stands under Outlook.`,
    },
    {
      label: "Protection interval",
      value: `${plan.interval.days} days`,
      note:
        `Lead time of ${plan.leadTimeDays} days (${supplier}) and ${reviewDays} days to the next check: ` +
        `an order placed then comes ${until}. From ${formatDay(today)} that makes ${openDays} open days.`,
    },
    {
      label: "Expected use",
      value: reckoned(plan.expectedUse),
      note: `${reckoned(plan.usePerWeek)} a week × ${openDays} ÷ 7.`,
    },
    { label: "Typical error", value: reckoned(plan.deviation), note: spreadWords(plan, reckoned) },
    {
      label: "Reorder point",
      value: reckoned(plan.reorderPoint),
      note:
        `The use over the interval that is not exceeded ${rounded(serviceLevel * 100, 1)} times in 100: ` +
        `quantile of a ${forecast.spread.whole ? "negative binomial" : "gamma"} distribution with that mean and error.`,
    },
    {
      label: "Safety stock",
      value: reckoned(plan.safetyStock),
      note: `${reckoned(plan.reorderPoint)} less the expected ${reckoned(plan.expectedUse)}.`,
    },
    {
      label: "By the textbook",
      value: reckoned(plan.expectedUse + safetyStock(serviceFactor(serviceLevel), plan.deviation)),
      note:
        `To compare, as errors were normal: ${reckoned(plan.expectedUse)} + ` +
        `${rounded(serviceFactor(serviceLevel), 2)} × ${reckoned(plan.deviation)}.`,
    },
    {
      label: "Position",
      value: position === null ? "not known" : booked(position),
      note: onHand === null ? "Never counted." : positionWords(question, booked),
    },
  ];
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

/** The error in figures: uses come by the parcel, and past forecasts of such sums were off by a share of them. */
function spreadWords(
  { forecast: { spread, method }, openDays, expectedUse }: ProtectionPlan,
  text: AmountText,
): string {
  const weeks = Math.max(1, openDays) / 7;
  const k = dispersionOver(spread.dispersions, weeks);
  const perUse = amountOfUnits(spread.perUse);
  const seen =
    method === FIRST_WEEKS_METHOD
      ? "a guess while there are few weeks"
      : "by what past forecasts of such sums were off";
  return `√(${text(perUse)} × ${text(expectedUse)} + ${rounded(k, 3)} × ${text(expectedUse)}²): one parcel takes about ${text(perUse)}; ${rounded(k, 3)} ${seen}.`;
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
