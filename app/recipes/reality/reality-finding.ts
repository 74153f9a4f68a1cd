/**
 * The first line of the screen.
 *
 * @param supplies that were counted at least twice
 * @param proposals that wait for an answer
 * @param answered proposals that are answered for the time being
 * @returns a sentence
 * @example realityFinding(3, 1, 0) // "The counts say that a card is off: change it, or say that it is right."
 */
export function realityFinding(supplies: number, proposals: number, answered: number): string {
  if (supplies === 0) return "No supply was counted twice yet: two counts show what went between them.";
  if (proposals === 0 && answered > 0) return "What the counts said is answered for now.";
  if (proposals === 0) return "The counts do not speak against any card.";
  if (proposals === 1) return "The counts say that a card is off: change it, or say that it is right.";
  return `The counts say that ${proposals} amounts on cards are off: change them, or say that they are right.`;
}
