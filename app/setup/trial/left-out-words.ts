import type { LeftOut } from "#lib/replenishment/trial/played-supplies";

const REASONS: Readonly<Record<LeftOut["reason"], string>> = {
  "not-counted": "never counted: count it first",
  "below-zero": "its book says less than nothing: count it first",
  "no-price": "no offer with a price: add one on its page",
  "not-used": "no use is expected",
};

/**
 * Why a supply is left out of a trial, and the way in.
 *
 * @param supply the supply
 * @example leftOutWords({ name: "Tissue", reason: "not-counted" }) // "Tissue (never counted: count it first)"
 */
export function leftOutWords({ name, reason }: LeftOut): string {
  return `${name} (${REASONS[reason]})`;
}
