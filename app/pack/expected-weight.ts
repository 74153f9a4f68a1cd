import { packedMass } from "#lib/packing/packed-mass";
import type { Milligrams } from "#lib/units/mass";
import type { PackingChoices } from "./packing-choices";
import type { PackingDraft } from "./packing-draft";

/** What the scale should say, or what is not known of it (names, as the shop wrote them). */
export type ExpectedWeight =
  | { readonly kind: "expected"; readonly mg: Milligrams }
  | { readonly kind: "part-known"; readonly knownMg: Milligrams; readonly unknown: readonly string[] };

/**
 * What the parcel on the bench should weigh. A saved odd carton has no known weight, and one that was cut down
 * still counts whole.
 * @param draft the parcel on the bench
 * @param choices masses of item types and supplies
 * @returns the weight, or the known part with the names of the rest
 */
export function expectedWeight(draft: PackingDraft, choices: PackingChoices): ExpectedWeight {
  const mass = packedMass({
    pieces: draft.pieces.map((piece) => ({
      ...piece,
      massMg: choices.itemTypes.find((type) => type.id === piece.itemTypeId)?.massMg ?? null,
    })),
    lines: draft.lines,
    cartons: draft.cartons.flatMap((carton) => (carton.supplyId === null ? [] : [carton.supplyId])),
    supplyMasses: new Map(choices.supplies.map((supply) => [supply.id, supply.massMg])),
  });
  const names = new Map([...choices.itemTypes, ...choices.supplies].map((known) => [known.id, known.name]));
  const unknown = [
    ...mass.unknown.map((id) => names.get(id) ?? id),
    ...(draft.cartons.length === 0 ? ["the carton"] : []),
    ...(draft.cartons.some((carton) => carton.supplyId === null) ? ["the odd carton"] : []),
  ];
  return unknown.length === 0
    ? { kind: "expected", mg: mass.mg }
    : { kind: "part-known", knownMg: mass.mg, unknown };
}
