import type { Estimate } from "#lib/replenishment/simulation/estimate";
import type { TrialResult } from "#lib/replenishment/trial/trial-steps";
import { less } from "#lib/replenishment/trial/trial-verdict";
import { promiseWords } from "../promise";
import type { MoneyWords } from "./money-words";
import { areSame, type TrialSettings } from "./trial-form";

const DAYS_A_WEEK = 7;
/** A part that makes up so much of a difference is named. */
const MOST = 0.6;

/** What the finding is made of. */
type Found = {
  readonly present: TrialSettings;
  readonly tried: TrialSettings;
  readonly result: TrialResult;
  /** cost of keeping stock over the span, as a share of its value */
  readonly keepingShare: number;
  readonly orderCost: number;
  readonly money: MoneyWords;
};

/**
 * What a trial found, in one sentence.
 *
 * @param found the settings, the result and what its money is made of
 * @example trialFinding(found) // "Looking every 14 days would cost about $20 less in 13 weeks, mostly for delivery, and
 *   leave supplies missing on 3.2 days instead of 2.4."
 */
export function trialFinding(found: Found): string {
  const { result, present, tried } = found;
  const would = result.span.kind === "past" ? "would have" : "would";
  const { cost, daysOut } = result.shop.difference;
  const [cheaper, safer] = [less(cost), less(daysOut)];
  const subject = changedWords(present, tried);
  if (cheaper === "alike" && safer === "alike") {
    const verb = would === "would" ? "would make" : "would have made";
    return `${subject} ${verb} no difference beyond chance, in cost or in days without a supply.`;
  }
  return `${subject} ${would} ${costWords(found)}, and ${dayWords(found)}.`;
}

function changedWords(present: TrialSettings, tried: TrialSettings): string {
  if (areSame({ ...present, reviewDays: tried.reviewDays }, tried)) {
    return tried.reviewDays === 1 ? "Looking every day" : `Looking every ${tried.reviewDays} days`;
  }
  if (areSame({ ...present, coverWeeks: tried.coverWeeks }, tried)) {
    return `Ordering for ${weeksWords(tried.coverWeeks)}`;
  }
  if (areSame({ ...present, promise: tried.promise }, tried)) {
    return `Stock that is to ${promiseWords(tried.promise)}`;
  }
  return "The settings to try";
}

function costWords(found: Found): string {
  const { result, money } = found;
  const { cost } = result.shop.difference;
  if (less(cost) === "alike") return "cost as much, as far as can be told";
  const part = mainPart(found);
  const span = weeksWords(result.span.days / DAYS_A_WEEK);
  return `cost about ${money(cost.mean)} ${cost.mean < 0 ? "less" : "more"} in ${span}${part === null ? "" : `, mostly ${part}`}`;
}

function dayWords({ result }: Found): string {
  const { present, tried, difference } = result.shop;
  const leave = result.span.kind === "past" ? "left" : "leave";
  if (less(difference.daysOut) === "alike") {
    return `${leave} supplies missing on as many days as now`;
  }
  return `${leave} supplies missing on ${dayCount(tried.daysOut)} instead of ${figure(present.daysOut)}`;
}

/** Which part of the cost makes most of the difference. */
function mainPart({ result, keepingShare, orderCost }: Found): string | null {
  const { difference } = result.shop;
  const parts = [
    ["for delivery", difference.deliveryCost.mean],
    ["for the work of ordering", difference.orders.mean * orderCost],
    ["for keeping stock", difference.meanValue.mean * keepingShare],
    ["by the prices of larger or smaller orders", difference.priceGap.mean],
  ] as const;
  const [words] = parts.find(([, mean]) => mean / difference.cost.mean >= MOST) ?? [null];
  return words;
}

function dayCount(estimate: Estimate): string {
  const text = figure(estimate);
  return `${text} ${text === "1" ? "day" : "days"}`;
}

function figure({ mean }: Estimate): string {
  return String(Number(mean.toFixed(1)));
}

/**
 * Weeks in words.
 *
 * @param weeks whole
 * @example weeksWords(13) // "13 weeks"
 */
export function weeksWords(weeks: number): string {
  return weeks === 1 ? "1 week" : `${weeks} weeks`;
}
