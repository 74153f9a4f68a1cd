import { AMOUNT_PER_UNIT, type Amount } from "#lib/units/amount";
import { type Milligrams, milligrams } from "#lib/units/mass";
import { nearestInteger } from "#lib/units/nearest-integer";

/** What a parcel should weigh; `unknown` names the item types and supplies that it leaves out. */
type PackedMass = { readonly mg: Milligrams; readonly unknown: readonly string[] };

/**
 * What a parcel should weigh: pieces, supplies and cartons, rounded once. What has no mass yet is left out and named.
 *
 * @param parcel - `pieces`: whole pieces and milligrams of one piece, null if never weighed. `lines`: amounts of
 *   supplies. `cartons`: supply ids. `supplyMasses`: milligrams of one use unit by supply id, null or absent if unknown
 * @returns the nearest milligram, and the ids without a mass, each once in the order met
 * @throws RangeError if a mass or a number of pieces is not a whole number from zero
 * @example packedMass({ pieces: [{ itemTypeId: "mug", pieces: 2, massMg: 370000 }], lines: [], cartons: ["cube-8"],
 *   supplyMasses: new Map([["cube-8", 197000]]) }) // { mg: 937000, unknown: [] }
 */
export function packedMass(parcel: {
  readonly pieces: readonly {
    readonly itemTypeId: string;
    readonly pieces: number;
    readonly massMg: number | null;
  }[];
  readonly lines: readonly { readonly supplyId: string; readonly amount: Amount }[];
  readonly cartons: readonly string[];
  readonly supplyMasses: ReadonlyMap<string, number | null>;
}): PackedMass {
  const loads = [
    ...parcel.pieces.map((each) => ({
      id: each.itemTypeId,
      massMg: each.massMg,
      parts: each.pieces * AMOUNT_PER_UNIT,
    })),
    ...parcel.lines.map((line) => ({
      id: line.supplyId,
      massMg: parcel.supplyMasses.get(line.supplyId) ?? null,
      parts: line.amount,
    })),
    ...parcel.cartons.map((id) => ({
      id,
      massMg: parcel.supplyMasses.get(id) ?? null,
      parts: AMOUNT_PER_UNIT,
    })),
  ];
  const parts = loads.reduce((sum, { massMg, parts: many }) => sum + productOf(massMg ?? 0, many), 0n);
  const unknown = loads
    .filter(({ massMg, parts: many }) => massMg === null && many !== 0)
    .map(({ id }) => id);
  return { mg: milligrams(nearestInteger(parts, BigInt(AMOUNT_PER_UNIT))), unknown: [...new Set(unknown)] };
}

function productOf(massMg: number, parts: number): bigint {
  if (!Number.isSafeInteger(massMg) || massMg < 0 || !Number.isSafeInteger(parts) || parts < 0) {
    throw new RangeError(
      `packedMass requires whole masses and amounts from zero, got ${massMg} and ${parts}`,
    );
  }
  return BigInt(massMg) * BigInt(parts);
}
