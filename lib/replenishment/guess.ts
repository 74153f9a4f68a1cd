import type { ProtectionPlan } from "#lib/replenishment/protection-plan";

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

function guessOfUse({ method }: ProtectionPlan): string | null {
  switch (method.kind) {
    case "first-days":
      return `the use comes from ${method.days === 1 ? "one day" : `${method.days} days`}`;
    case "too-few-weeks":
      return `the use comes from ${method.method.window === 1 ? "one week" : `${method.method.window} weeks`}`;
    case "compared":
    case "too-few-to-compare":
    case "rarely-used":
      return null;
    default:
      return method satisfies never;
  }
}

function guessOfLeadTime(plan: ProtectionPlan, hasOffer: boolean): string | null {
  return hasOffer ? null : `a lead time of ${plan.leadTimeDays} days is assumed, as there is no offer`;
}
