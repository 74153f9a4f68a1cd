import type { CandidateCarton } from "#lib/cartons/choice/candidate-carton";
import type { ChoiceRequest } from "#lib/cartons/choice/choice-request";
import { USUAL_CUT } from "#lib/cartons/choice/cut-terms";
import type { CartonTerms } from "#lib/cartons/cost/carton-cost";
import type { PackedLoad } from "#lib/cartons/cost/packed-load";
import { USUAL_EFFORT } from "#lib/cartons/fit/fit-effort";
import { USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
import { cartonMass } from "#lib/packing/carton-mass";
import { USUAL_LEGS } from "#lib/packing/carton-tape";

export const IN = 25_400;
export const CUBIC_INCH_ML = 16.387064;
/** 1/10,000 minor unit in a cent. */
export const CENT = 10_000;

/** Inches as a block. */
export const inches = (length: number, width: number, height: number) => ({
  lengthUm: length * IN,
  widthUm: width * IN,
  heightUm: height * IN,
});

/** A new, rated, counted carton that moves; board by its blank, 4 mm thick. */
export function carton(
  id: string,
  sides: readonly [number, number, number],
  cents: number,
  more: Partial<CandidateCarton> = {},
): CandidateCarton {
  const inside = inches(...sides);
  return {
    ...{ id, inside, boardUm: 4_000, massMg: cartonMass(inside), value: cents * CENT },
    rating: { kind: "edgeCrush", wall: "single", poundsPerInch: 32 },
    ...{ condition: "new", onHand: 20, isSaved: false, useFirst: false, ageing: "moves" },
    ...more,
  };
}

/**
 * A mug of 370 g, wrapped: tissue 6.6 g, small bubble 18.4 g and papers of 10 g; 140 cu in, so that an 8 in cube has 372 cu
 * in to fill. Common practice, no source.
 */
export const MUG: PackedLoad = {
  pieces: [{ block: inches(5.5, 5.5, 4.75), upright: true }],
  ml: 140 * CUBIC_INCH_ML,
  massMg: 405_000,
};

/** Sheets of 52 cu in, 27.2 g and 7 cents; H tape of 2.3 g a metre at $3 for 110 yards; 6 dollars to 1 kg, 8 above. */
export const MUG_TERMS: CartonTerms = {
  fill: { mlPerUnit: 52 * CUBIC_INCH_ML, massMg: 27_200, value: 7 * CENT },
  tape: {
    ...{ pattern: "h", legs: USUAL_LEGS, factor: 1 },
    ...{ massMgPerUm: 2.3e-3, valuePerUm: (300 * CENT) / (110 * 36 * IN) },
  },
  bulgeUm: 0,
  postage: (massMg) => (massMg <= 1_000_000 ? 600 : 800),
};

const ONE_INCH = { wallsUm: IN, baseUm: IN, topUm: IN };

/** The mug with an inch all round, fragile, minutes not counted. */
export function mugRequest(
  candidates: readonly CandidateCarton[],
  more: Partial<ChoiceRequest> = {},
): ChoiceRequest {
  return {
    ...{ load: MUG, clearance: ONE_INCH, candidates, terms: MUG_TERMS },
    ...{ loadType: "difficult", trust: USUAL_TRUST, minuteValue: null, cut: USUAL_CUT },
    ...{ stockMarginPerMille: 100, effort: USUAL_EFFORT },
    ...more,
  };
}
