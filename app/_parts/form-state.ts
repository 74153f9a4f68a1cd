import type { ZodError } from "zod";

/** What a form shows after it was sent: nothing yet, what to mend with all that was typed, or what was done. */
export type FormState =
  | { readonly kind: "blank" }
  | {
      readonly kind: "refused";
      readonly problems: Readonly<Record<string, string>>;
      readonly typed: Readonly<Record<string, string>>;
      readonly attempt: number;
    }
  | { readonly kind: "done"; readonly words: string; readonly attempt: number };

/** Where every form begins. */
export const BLANK: FormState = { kind: "blank" };

/**
 * The text fields of a sent form by name, trimmed; fields that were left empty are not in the result, so
 * that a schema can say "optional". A name that was sent several times, as by ticks, has its texts one a line.
 *
 * @param form as the browser sent it
 * @returns name and text
 * @example typedValues(form) // { name: "Small bubble" }
 */
export function typedValues(form: FormData): Record<string, string> {
  const typed: Record<string, string> = {};
  for (const [name, value] of form.entries()) {
    if (typeof value === "string" && value.trim() !== "" && !name.startsWith("$")) {
      typed[name] = Object.hasOwn(typed, name) ? `${typed[name]}\n${value.trim()}` : value.trim();
    }
  }
  return typed;
}

/**
 * A refusal that keeps what was typed and names the field of each problem.
 *
 * @param before the state the form was sent from
 * @param form as sent
 * @param problems what is wrong and the way out, by field; the field "" is the form as a whole
 * @returns the state to show
 */
export function refused(before: FormState, form: FormData, problems: Record<string, string>): FormState {
  return { kind: "refused", problems, typed: typedValues(form), attempt: attemptOf(before) + 1 };
}

/**
 * A success in words.
 *
 * @param before the state the form was sent from
 * @param words what was done
 * @returns the state to show
 */
export function done(before: FormState, words: string): FormState {
  return { kind: "done", words, attempt: attemptOf(before) + 1 };
}

/**
 * The first problem of each field, in the schema's words.
 *
 * @param error what the schema found
 * @returns problem by field name
 */
export function problemsOf(error: ZodError): Record<string, string> {
  const problems: Record<string, string> = {};
  for (const issue of error.issues) {
    const field = issue.path.map(String).join(".");
    problems[field] ??= issue.message;
  }
  return problems;
}

/** Which sending of the form this state answers; 0 before the first. */
export function attemptOf(state: FormState): number {
  return state.kind === "blank" ? 0 : state.attempt;
}
