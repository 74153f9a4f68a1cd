import type { FitAnswer } from "./fit-answer";

/**
 * The first line of the fit finder.
 *
 * @param answer null where nothing was asked yet, or what was asked can't be read
 * @param nameOf name of a carton
 * @returns one sentence
 */
export function fitFinding(answer: FitAnswer | null, nameOf: (cartonId: string) => string): string {
  if (answer === null) return "Which carton do these pieces go in?";
  if (answer.kind === "no-fill") return "No answer yet: nothing on the shelf fills a carton.";
  const [first] = answer.choices.answers;
  if (first === undefined) return "None of your cartons would do.";
  const name = nameOf(first.carton.id);
  if (first.why === "notOnHand") return `${name} would do, but none of it is there.`;
  return first.why === "cutDown" ? `${name}, cut down.` : `${name}.`;
}
