import type { FirstStep } from "./first-steps";

/**
 * The first line of Setup: the next step of a new shop, or that all stands.
 *
 * @param shopName the shop's name
 * @param steps the first steps
 * @returns a sentence
 */
export function setupFinding(shopName: string, steps: readonly FirstStep[]): string {
  const left = steps.filter((step) => !step.isDone);
  const [next] = left;
  if (next === undefined) return `${shopName} is set up; everything here can be changed at any time.`;
  return `${shopName} has ${left.length === 1 ? "one step" : `${left.length} steps`} to go to its first answer.`;
}
