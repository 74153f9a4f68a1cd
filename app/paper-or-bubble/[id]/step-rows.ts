import type { WayCost } from "#lib/cushioning/way-cost";
import { compareRatios } from "#lib/postage/ratio";
import { stepWords } from "#lib/postage/step-words";
import type { MoneyAndMass } from "../why-words";
import { minorText, shareText } from "../why-words";

/** A step of the rate card with the chance that each way pays it. */
export type StepRow = { readonly name: string; readonly cells: readonly string[] };

/** Chances that nobody would act on are not shown. */
const LEAST_CHANCE = 0.0005;

/**
 * The chance of each postage step in each way to pack.
 *
 * @param costs of the ways, in the order of the columns
 * @param shop how it writes money
 * @returns lightest first; steps that no way is likely to pay are left out
 */
export function stepRows(costs: readonly WayCost[], shop: MoneyAndMass): StepRow[] {
  const steps = costs.flatMap(({ postage }) => postage?.steps ?? []);
  const distinct = steps
    .filter(({ chance }) => chance >= LEAST_CHANCE)
    .map(({ step }) => step)
    .filter((step, at, all) => all.findIndex((each) => stepWords(each) === stepWords(step)) === at)
    .toSorted((a, b) => compareRatios(a.upToNg, b.upToNg) || a.bandAt - b.bandAt);
  return distinct.map((step) => ({
    name: stepWords(step),
    cells: costs.map(({ postage }) => {
      if (postage === null) return "not known";
      const own = postage.steps.find((each) => stepWords(each.step) === stepWords(step));
      if (own === undefined || own.chance < LEAST_CHANCE) return "hardly any";
      const price = own.minor === null ? "" : `, ${minorText(own.minor, shop)}`;
      return `${shareText(own.chance)}${price}`;
    }),
  }));
}
