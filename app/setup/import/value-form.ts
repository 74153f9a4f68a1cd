import type { AskedValue } from "#prisma/records/import/import-values";
import type { FormField } from "../../_parts/form-field";
import { FIELD_WORDS } from "../../import/problem-words";

/** What the seller says a text stands for. */
export type ValueAnswer =
  | { readonly kind: "known"; readonly id: string }
  | { readonly kind: "left-out" }
  | { readonly kind: "new" };

const NEW = "new:";
const LEFT_OUT = "leave:";
const KNOWN = "id:";

/** Name of a text's field in the form. */
export function valueFieldName(value: AskedValue): string {
  return `${value.kind}:${value.text}`;
}

/** The field in which one unknown text is explained. */
export function valueField(value: AskedValue, choices: readonly { id: string; name: string }[]): FormField {
  const known = choices.map(({ id, name }) => ({ value: `${KNOWN}${id}`, words: name }));
  const added = value.kind === "style" ? [] : [{ value: NEW, words: `Add “${value.text}”` }];
  const left = value.kind === "item-type" ? [] : [{ value: LEFT_OUT, words: "Leave it out" }];
  return {
    name: valueFieldName(value),
    label: `${FIELD_WORDS[value.kind].name} “${value.text}”`,
    kind: "choice",
    choices: [...added, ...known, ...left],
    value: added[0]?.value ?? "",
  };
}

/** The answer that was sent, or null where it is none. */
export function answerOf(value: AskedValue, sent: string, ids: readonly string[]): ValueAnswer | null {
  if (sent === NEW && value.kind !== "style") return { kind: "new" };
  if (sent === LEFT_OUT && value.kind !== "item-type") return { kind: "left-out" };
  const id = sent.startsWith(KNOWN) ? sent.slice(KNOWN.length) : "";
  return ids.includes(id) ? { kind: "known", id } : null;
}
