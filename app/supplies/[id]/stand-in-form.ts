import { z } from "zod";
import type { Measures } from "#lib/units/measures";
import { SUBSTITUTE_JOBS } from "#prisma/records/substitutes";
import type { Supply } from "#prisma/records/supplies";
import type { FormField } from "../../_parts/form-field";
import { amountAboveZero, optionalText } from "../../_parts/typed-fields";
import { JOB_WORDS } from "../job-words";

/**
 * The fields of a rule for what stands in for a supply.
 *
 * @param supply the supply that may be missing
 * @param others what may stand in
 * @returns the fields in order
 */
export function standInFields(supply: Supply, others: readonly Supply[]): FormField[] {
  return [
    {
      name: "standInId",
      label: "Instead, take",
      kind: "choice",
      choices: others.map((other) => ({ value: other.id, words: other.name })),
    },
    { name: "amount", label: "so much of it", kind: "text", hint: "2, 1/2, 3 ft", required: true },
    { name: "insteadOf", label: `for so much of ${supply.name}`, kind: "text", value: "1", required: true },
    {
      name: "job",
      label: "where it",
      kind: "choice",
      value: "shock",
      choices: SUBSTITUTE_JOBS.map((job) => ({ value: job, words: JOB_WORDS[job] })),
    },
    { name: "note", label: "Mind", kind: "text", hint: "the carton may bulge" },
  ];
}

/** Which supply stands in, read first: its amount is in its own use unit. */
export const standInChoice = z.object({ standInId: z.string("Choose what stands in.") });

/**
 * A rule as typed.
 *
 * @param supply the supply that may be missing
 * @param standIn what stands in for it
 * @param measures how amounts are read
 */
export function standInForm(supply: Supply, standIn: Supply, measures: Measures) {
  return z.object({
    amount: amountAboveZero(standIn.useUnit, measures),
    insteadOf: amountAboveZero(supply.useUnit, measures),
    job: z.enum(SUBSTITUTE_JOBS, "Choose what it does."),
    note: optionalText,
  });
}
