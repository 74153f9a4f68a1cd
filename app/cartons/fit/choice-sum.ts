import type { CartonChoice } from "#lib/cartons/choice/carton-choice";
import { splitMinor } from "#lib/units/money";

const VALUE_PER_MINOR = 10_000;

/** What a load costs in a carton, in minor units; the parts add up to the sum. */
export type ChoiceSum = {
  readonly carton: number;
  readonly fill: number;
  readonly tape: number;
  /** null where no postage is counted */
  readonly postage: { readonly minor: number; readonly massMg: number } | null;
  /** the seller's time for cutting; null where none is counted */
  readonly minutes: number | null;
  readonly together: number;
};

/**
 * The sum of an answer, rounded once; its parts are rounded so that they add up to it.
 *
 * @param choice an answer
 * @returns minor units
 * @throws RangeError as `splitMinor`
 */
export function choiceSum(choice: CartonChoice): ChoiceSum {
  const cost = choice.why === "cutDown" ? choice.cut.cost : choice.cost;
  const minutesValue = choice.why === "cutDown" ? choice.cut.minutesValue : null;
  const together = Math.round(choice.total.value / VALUE_PER_MINOR);
  const values = [
    cost.cartonValue,
    cost.fillValue,
    cost.tapeValue,
    cost.postageValue ?? 0,
    minutesValue ?? 0,
  ];
  const isFree = values.every((value) => value === 0);
  const [carton = 0, fill = 0, tape = 0, postage = 0, minutes = 0] = isFree
    ? []
    : splitMinor(together, values);
  return {
    carton,
    fill,
    tape,
    postage: cost.postageValue === null ? null : { minor: postage, massMg: cost.massMg },
    minutes: minutesValue === null ? null : minutes,
    together,
  };
}
