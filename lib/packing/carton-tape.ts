import { MICROMETRES_PER_INCH, type Micrometres, micrometres } from "#lib/units/length";

/** How a carton is closed: one strip top and bottom, the bottom strip doubled, or an H top and bottom. */
export type TapePattern = "single" | "doubled-bottom" | "h";

/** How far tape runs down the walls at each end of a strip. */
export type TapeLegs = { readonly centreUm: number; readonly edgeUm: number };

/** 2.75 in from a tape supplier's page; 2 in for the short sides of an H is common practice, no source. */
export const USUAL_LEGS: TapeLegs = {
  centreUm: 2.75 * MICROMETRES_PER_INCH,
  edgeUm: 2 * MICROMETRES_PER_INCH,
};

/**
 * Tape to close a carton, in theory; rolls finished at the bench run out several times sooner, so learn the factor.
 * Single: 2 (L + 2c). Doubled bottom: 3 (L + 2c). H: 2 (L + 2c + 2 (W + 2e)), where c and e are the legs.
 *
 * @param carton - length and width of the carton in micrometres, above zero, and the pattern
 * @param legs - micrometres that the tape runs down at each end of a strip
 * @returns the length of tape
 * @throws RangeError if a length is not as said
 * @see computed from the formula
 * @example cartonTape({ lengthUm: 203200, widthUm: 203200, pattern: "h" }) // 1905000, which is 75 in
 */
export function cartonTape(
  carton: { readonly lengthUm: number; readonly widthUm: number; readonly pattern: TapePattern },
  legs: TapeLegs = USUAL_LEGS,
): Micrometres {
  if (!(carton.lengthUm > 0 && carton.widthUm > 0)) {
    throw new RangeError(
      `cartonTape requires sides above zero, got ${carton.lengthUm} and ${carton.widthUm}`,
    );
  }
  if (!(legs.centreUm >= 0 && legs.edgeUm >= 0)) {
    throw new RangeError(`cartonTape requires legs from zero, got ${legs.centreUm} and ${legs.edgeUm}`);
  }
  const centre = carton.lengthUm + 2 * legs.centreUm;
  const edge = carton.widthUm + 2 * legs.edgeUm;
  return micrometres(Math.round(tapeOf(carton.pattern, centre, edge)));
}

function tapeOf(pattern: TapePattern, centre: number, edge: number): number {
  switch (pattern) {
    case "single":
      return 2 * centre;
    case "doubled-bottom":
      return 3 * centre;
    case "h":
      return 2 * (centre + 2 * edge);
    default:
      return pattern satisfies never;
  }
}
