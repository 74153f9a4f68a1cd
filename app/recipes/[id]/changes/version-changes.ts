import type { RecipeVersion } from "#lib/packing/recipe-version";
import { type Amount, amount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import type { UseUnit } from "#lib/units/use-unit";

/** What is known of a supply to tell a change of a card. */
export type NamedSupply = { readonly name: string; readonly useUnit: UseUnit };

/**
 * What a version of a card changed against the one before: steps that came, went or take another amount, and cartons.
 * A step is the same one where supply, words and "each piece" or "once a parcel" are; where the words changed too, the
 * next step of the same supply.
 *
 * @param before the version before
 * @param now the version
 * @param supplyOf name and use unit of a supply
 * @returns one line a change; none where the cards are the same
 */
export function versionChanges(
  before: RecipeVersion,
  now: RecipeVersion,
  supplyOf: (supplyId: string) => NamedSupply,
): string[] {
  const left = [...before.steps];
  const take = (fits: (step: Step) => boolean): Step | undefined => {
    const index = left.findIndex(fits);
    return index < 0 ? undefined : left.splice(index, 1)[0];
  };
  const exact = now.steps.map((step) => take((old) => isLike(old, step) && old.words === step.words));
  const pairs = now.steps.map((step, index) => ({
    step,
    old: exact[index] ?? take((old) => isLike(old, step)),
  }));
  const say = (step: Step): string => {
    const { name, useUnit } = supplyOf(step.supplyId);
    return `${step.words} (${name}, ${formatAmount(step.amount, useUnit)})`;
  };
  return [
    ...pairs.flatMap(({ step, old }) => {
      if (old === undefined) return [`New: ${say(step)}.`];
      if (old.amount === step.amount && old.words === step.words) return [];
      if (old.amount === step.amount) return [`“${old.words}” is now “${step.words}”.`];
      return [`${step.words}: ${amountsWords(old.amount, step.amount, supplyOf(step.supplyId))}.`];
    }),
    ...left.map((step) => `Left out: ${say(step)}.`),
    ...cartonChanges(before, now, (supplyId) => supplyOf(supplyId).name),
  ];
}

type Step = RecipeVersion["steps"][number];

function isLike(one: Step, other: Step): boolean {
  return one.supplyId === other.supplyId && one.per === other.per;
}

function amountsWords(from: Amount, to: Amount, { name, useUnit }: NamedSupply): string {
  const more = amount(Math.abs(to - from));
  const said = `${formatAmount(more, useUnit)} ${to > from ? "more" : "less"}`;
  return `${said} of ${name}, ${formatAmount(to, useUnit)} instead of ${formatAmount(from, useUnit)}`;
}

function cartonChanges(
  before: RecipeVersion,
  now: RecipeVersion,
  nameOf: (supplyId: string) => string,
): string[] {
  const sizes = [...new Set([...before.cartons, ...now.cartons].map(({ upTo }) => upTo))].sort(
    (a, b) => a - b,
  );
  return sizes.flatMap((upTo) => {
    const old = before.cartons.find((carton) => carton.upTo === upTo)?.supplyId;
    const own = now.cartons.find((carton) => carton.upTo === upTo)?.supplyId;
    if (old === own) return [];
    const pieces = upTo === 1 ? "one piece" : `up to ${upTo} pieces`;
    if (own === undefined) return [`No carton for ${pieces} any more.`];
    return [`Carton for ${pieces}: ${nameOf(own)}${old === undefined ? "" : ` instead of ${nameOf(old)}`}.`];
  });
}
