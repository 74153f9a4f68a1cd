import { cartonMass } from "#lib/packing/carton-mass";
import type { DraftSupply } from "#lib/packing/draft-supply";
import { packedMass } from "#lib/packing/packed-mass";
import type { DraftCarton, DraftRequest } from "#lib/packing/recipe/draft-request";
import type { RecipeStep } from "#lib/packing/recipe-version";
import { scaleAmount } from "#lib/units/amount";
import type { Milligrams } from "#lib/units/mass";

/**
 * What a drafted parcel should weigh. `unknown` names what has no mass and is left out; `guessed` the cartons whose
 * mass was reckoned from their board.
 */
export type DraftedMass = {
  readonly mg: Milligrams;
  readonly unknown: readonly string[];
  readonly guessed: readonly string[];
};

/**
 * The mass of a drafted parcel: pieces, steps, cartons and papers. A carton that was never weighed is reckoned from
 * its blank.
 *
 * @param request - piece, pieces, habits, supplies, cartons
 * @param steps - steps of the recipe; the inner carton of a double box is one of them
 * @returns the mass with what it leaves out and what is guessed
 * @throws RangeError if a mass is not a whole number from zero
 * @example draftedMass(request, steps).mg
 */
export function draftedMass(
  request: Pick<DraftRequest, "piece" | "pieces" | "habits" | "supplies" | "carton" | "outer">,
  steps: readonly Pick<RecipeStep, "supplyId" | "amount" | "per">[],
): DraftedMass {
  const { piece, pieces, habits, supplies, carton, outer } = request;
  const cartons: readonly DraftCarton[] = outer === null ? [carton] : [outer, carton];
  const chosen = Object.values(supplies).filter((supply): supply is DraftSupply => supply !== null);
  const supplyMasses = new Map<string, number | null>([
    ...chosen.map(({ supplyId, massMg }): [string, number | null] => [supplyId, massMg]),
    ...cartons.map((each): [string, number] => [
      each.supplyId,
      each.massMg ?? cartonMass(each.inside, habits.boardPoundsPerSquareFoot),
    ]),
  ]);
  const { mg, unknown } = packedMass({
    pieces: [
      { itemTypeId: piece.itemTypeId, pieces, massMg: piece.massMg },
      { itemTypeId: "papers", pieces: 1, massMg: habits.papersMg },
    ],
    lines: steps.map(({ supplyId, amount, per }) => ({
      supplyId,
      amount: per === "piece" ? scaleAmount(amount, pieces) : amount,
    })),
    cartons: cartons.slice(0, 1).map(({ supplyId }) => supplyId),
    supplyMasses,
  });
  const guessed = cartons.filter(({ massMg }) => massMg === null).map(({ supplyId }) => supplyId);
  return { mg, unknown, guessed };
}
