import type { CartonChoice, WholeChoice } from "#lib/cartons/choice/carton-choice";

/** A choice of a carton taken as it is, which the test knows that it got. */
export function wholeOf(choice: CartonChoice | undefined): WholeChoice {
  if (choice === undefined || choice.why === "cutDown") throw new Error("a whole carton should be offered");
  return choice;
}
