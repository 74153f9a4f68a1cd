import { type Goal, goalOf } from "#prisma/records/buying-terms";
import type { Choice } from "../_parts/sentence-choice";

/** What a shop promises itself of its stock: how often it may run out, or how much of the need comes from the shelf. */
export type Promised = { readonly goal: Goal; readonly perMille: number };

const WHOLE = 1_000;
const USUAL: Promised = { goal: "cycles", perMille: 950 };
const LEAST = 500;

const OFFERED: readonly Promised[] = [
  { goal: "cycles", perMille: 900 },
  USUAL,
  { goal: "cycles", perMille: 980 },
  { goal: "cycles", perMille: 990 },
  { goal: "share", perMille: 950 },
  { goal: "share", perMille: 980 },
  { goal: "share", perMille: 990 },
  { goal: "share", perMille: 995 },
];

/**
 * A promise in plain words, so that the two kinds cannot be taken for one another.
 *
 * @param promised the kind and the share per thousand
 * @returns words without a capital
 * @example promiseWords({ goal: "cycles", perMille: 950 }) // "run out at most once in 20 order cycles"
 * @example promiseWords({ goal: "share", perMille: 980 }) // "fill 98 of 100 from stock"
 */
export function promiseWords({ goal, perMille }: Promised): string {
  if (goal === "cycles")
    return `run out at most once in ${Math.round(WHOLE / (WHOLE - perMille))} order cycles`;
  return perMille % 10 === 0
    ? `fill ${perMille / 10} of 100 from stock`
    : `fill ${perMille} of 1,000 from stock`;
}

/**
 * The promises to choose from; one that is in force and not among them stands last.
 *
 * @param now the promise in force, or null where none is
 * @returns values such as "cycles:950" with their words
 */
export function promiseChoices(now: Promised | null): Choice[] {
  const known = OFFERED.some((one) => promiseValue(one) === (now === null ? "" : promiseValue(now)));
  const all = now === null || known ? OFFERED : [...OFFERED, now];
  return all.map((one) => ({ value: promiseValue(one), words: choiceWords(one) }));
}

function choiceWords(promised: Promised): string {
  const words = promiseWords(promised);
  return promiseValue(promised) === promiseValue(USUAL) ? `${words}: the usual choice` : words;
}

/** A promise as the value of a choice. */
export function promiseValue({ goal, perMille }: Promised): string {
  return `${goal}:${perMille}`;
}

/**
 * Reads the value of a choice.
 *
 * @param value as `promiseValue` writes it
 * @returns the promise, or null where it is none
 */
export function promiseOf(value: string): Promised | null {
  const match = /^(cycles|share):(\d{3})$/.exec(value);
  const perMille = Number(match?.[2]);
  return match === null || perMille < LEAST ? null : { goal: goalOf(match[1] ?? ""), perMille };
}
