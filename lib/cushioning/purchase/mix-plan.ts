import { type CheckedMix, checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { choiceOfMix } from "#lib/cushioning/purchase/choice-of-mix";
import type { MixQuestion } from "#lib/cushioning/purchase/mix-question";
import { onlyStyle } from "#lib/cushioning/purchase/only-style";
import { type MixPlan, solvedMix } from "#lib/cushioning/purchase/solved-mix";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { PlanMeans } from "#lib/purchasing/plan/plan-means";

/** The plan in which each type is packed in one style, as far as it has a recipe in it. */
export type StylePlan = {
  readonly style: CushionStyle;
  readonly plan: MixPlan;
  /** types without a recipe in the style, which are packed in the ways that they have */
  readonly keptTypeIds: readonly string[];
};

/** The plan that may mix styles, and those of one style that it is held against. */
export type MixPlans = Omit<CheckedMix, "question"> & {
  readonly mixed: MixPlan;
  readonly byStyle: readonly StylePlan[];
};

/** Styles that a mix is held against. */
const STYLES: readonly CushionStyle[] = ["paper", "bubble"];

/** Part of the time for the plans of one style together; they are smaller, and mostly take far less. */
const SHARE_OF_TIME = 0.2;

/**
 * Which packs to buy and which item types to pack in which style, so that purchase, postage and other costs, less the
 * worth of what is left over, are least: as one mixed-integer model; and the same for all paper and for all bubble. As
 * both are also plans of the mix, it starts from the better of them and is never dearer than either, unless it leaves
 * less undone. With the time 0 greedy plans are given.
 *
 * @param asked all of the mix
 * @param means solver, time for all plans together, gap, clock
 * @returns the plans, offers that were left out, worths that were capped
 * @throws RangeError for a question that makes no sense, naming what is wrong
 */
export async function mixPlans(asked: MixQuestion, means: PlanMeans): Promise<MixPlans> {
  const begun = means.now();
  const left = () => Math.max(0, means.seconds - (means.now() - begun));
  const { question, ...said } = checkedMix(asked);
  const byStyle: StylePlan[] = [];
  for (const style of STYLES) {
    const only = onlyStyle(question, style);
    const seconds = Math.min(left(), (means.seconds * SHARE_OF_TIME) / STYLES.length);
    const plan = await solvedMix(only.question, { ...means, seconds }, []);
    byStyle.push({ style, plan, keptTypeIds: only.keptTypeIds });
  }
  const starts = byStyle.map(({ plan }) => ({ choice: choiceOfMix(plan), from: plan.from }));
  const mixed = await solvedMix(question, { ...means, seconds: left() }, starts);
  return { ...said, mixed, byStyle };
}
