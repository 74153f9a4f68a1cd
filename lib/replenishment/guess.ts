import { FIRST_WEEKS_METHOD } from "#lib/forecast/shop/first-weeks-outlook";
import type { ProtectionPlan } from "#lib/replenishment/protection-plan";

/** From so many weeks on the use is no guess. */
const FEW_WEEKS = 4;

/**
 * What of a row is guessed, in words that can follow "a guess:".
 *
 * @param plan the supply's plan
 * @param hasOffer whether a supplier's lead time is known
 * @returns the words, or null when nothing is guessed
 * @example guess(plan, false) // "a lead time of 7 days is assumed, as there is no offer."
 */
export function guess(plan: ProtectionPlan, hasOffer: boolean): string | null {
  const parts = [guessOfUse(plan), guessOfLeadTime(plan, hasOffer)].filter((part) => part !== null);
  return parts.length === 0 ? null : `${parts.join("; ")}.`;
}

function guessOfUse({ forecast: { guessedShare, weeksSeen, method } }: ProtectionPlan): string | null {
  if (guessedShare > 0) {
    const percent = Math.round(guessedShare * 100);
    return `${percent === 100 ? "all" : `${percent} %`} of the use is your guess of parcels a week`;
  }
  if (method !== FIRST_WEEKS_METHOD || weeksSeen >= FEW_WEEKS) return null;
  if (weeksSeen === 0) return "the use comes from the first days";
  return `the use comes from ${weeksSeen === 1 ? "one week" : `${weeksSeen} weeks`}`;
}

function guessOfLeadTime(plan: ProtectionPlan, hasOffer: boolean): string | null {
  return hasOffer ? null : `a lead time of ${plan.leadTimeDays} days is assumed, as there is no offer`;
}
