import { chargedSize } from "#lib/cartons/board/charged-size";
import type { OfferedCarton, PackedLoad } from "#lib/cartons/cost/packed-load";
import { blockVolume } from "#lib/packing/block";
import { cartonTape, type TapeLegs, type TapePattern } from "#lib/packing/carton-tape";
import type { ParcelSize } from "#lib/postage/parcel-size";

/** What fills a void: what one use unit fills in millilitres, weighs in milligrams and costs in 1/10,000 minor unit. */
export type FillTerms = { readonly mlPerUnit: number; readonly massMg: number; readonly value: number };

/** What closes a carton: the pattern, what is used over theory, and mass and cost of a micrometre. */
export type TapeTerms = {
  readonly pattern: TapePattern;
  readonly legs: TapeLegs;
  readonly factor: number;
  readonly massMgPerUm: number;
  readonly valuePerUm: number;
};

/** What packing into a carton costs by. */
export type CartonTerms = {
  readonly fill: FillTerms;
  readonly tape: TapeTerms;
  /** how far each wall bows out when packed, micrometres */
  readonly bulgeUm: number;
  /** expected postage in minor units for a likely mass in milligrams and the size that is charged; null where none is known */
  readonly postage: (massMg: number, size: ParcelSize) => number | null;
};

/** What a load costs in a carton; values in 1/10,000 minor unit. */
export type CartonCost = {
  readonly cartonValue: number;
  /** void in millilitres, use units of fill in theory, and what they cost */
  readonly voidMl: number;
  readonly fillUnits: number;
  readonly fillValue: number;
  readonly tapeUm: number;
  readonly tapeValue: number;
  /** likely mass of the parcel in milligrams */
  readonly massMg: number;
  readonly size: ParcelSize;
  /** null where no postage is known: the total is of the materials then */
  readonly postageValue: number | null;
  readonly totalValue: number;
};

const VALUE_PER_MINOR = 10_000;

/**
 * What it costs to pack a load into a carton and to send it: carton, fill for the void, tape by the pattern, and the
 * postage expected for the mass and the outside that come of it. In theory, not rounded to whole sheets, so that cartons
 * compare by what they take and not by how a sheet happens to round.
 *
 * @param load what goes in; whether it fits is not asked here
 * @param carton inside, board, mass and price
 * @param terms fill, tape, bulge and postage
 * @returns the parts and their sum
 * @throws RangeError if the load takes more than the inside, or fill that fills nothing is needed
 * @see computed from the formulas of `cartonTape` and `packedOutside`
 * @example cartonCost(mugLoad, cube8, terms).totalValue
 */
export function cartonCost(load: PackedLoad, carton: OfferedCarton, terms: CartonTerms): CartonCost {
  const voidMl = blockVolume(carton.inside) - load.ml;
  if (!(voidMl >= 0)) {
    throw new RangeError(
      `cartonCost requires a load of at most the inside of ${carton.id}, got ${load.ml} ml`,
    );
  }
  const { fill, tape } = terms;
  if (!(fill.mlPerUnit > 0))
    throw new RangeError(`cartonCost requires fill that fills, got ${fill.mlPerUnit}`);
  const fillUnits = voidMl / fill.mlPerUnit;
  const { lengthUm, widthUm } = carton.inside;
  const tapeUm = cartonTape({ lengthUm, widthUm, pattern: tape.pattern }, tape.legs) * tape.factor;
  const massMg = load.massMg + carton.massMg + fillUnits * fill.massMg + tapeUm * tape.massMgPerUm;
  const size = chargedSize(carton.inside, { boardUm: carton.boardUm, bulgeUm: terms.bulgeUm });
  const postage = terms.postage(massMg, size);
  const parts = {
    cartonValue: carton.value,
    fillValue: fillUnits * fill.value,
    tapeValue: tapeUm * tape.valuePerUm,
    postageValue: postage === null ? null : postage * VALUE_PER_MINOR,
  };
  const totalValue = parts.cartonValue + parts.fillValue + parts.tapeValue + (parts.postageValue ?? 0);
  return { ...parts, voidMl, fillUnits, tapeUm, massMg, size, totalValue };
}
