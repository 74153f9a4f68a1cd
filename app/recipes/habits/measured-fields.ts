import type { Supply } from "#prisma/records/supplies";
import type { FormField } from "../../_parts/form-field";

const SURE: FormField = {
  name: "sure",
  label: "It is right all the same",
  kind: "tick",
  onlyWhenAsked: true,
};

function choice(name: string, label: string, supplies: readonly Supply[]): FormField {
  return {
    name,
    label,
    kind: "choice",
    choices: supplies.map(({ id, name: words }) => ({ value: id, words })),
  };
}

/**
 * Fill one empty carton and count.
 *
 * @param cartons with their inside sizes
 * @param fills what can fill it
 */
export function filledFields(cartons: readonly Supply[], fills: readonly Supply[]): FormField[] {
  return [
    choice("cartonId", "The empty carton", cartons),
    choice("supplyId", "was filled with", fills),
    { name: "amount", label: "so much of it", kind: "text", hint: "33, 19 1/2", required: true },
    SURE,
  ];
}

/** Weigh several at once. */
export function weighedFields(supplies: readonly Supply[]): FormField[] {
  return [
    choice("supplyId", "On the scale", supplies),
    { name: "amount", label: "so much of it", kind: "text", value: "10", required: true },
    { name: "mass", label: "weighs", kind: "text", hint: "46 g, 1.6 oz", required: true },
    SURE,
  ];
}

/** Rolls of tape finished against cartons closed. */
export function finishedFields(tapes: readonly Supply[], cartons: readonly Supply[]): FormField[] {
  return [
    choice("supplyId", "Tape", tapes),
    { name: "rolls", label: "Rolls finished", kind: "number", value: "1", required: true },
    choice("cartonId", "closed cartons like", cartons),
    { name: "cartons", label: "so many of them", kind: "number", hint: "40", required: true },
    SURE,
  ];
}
