import { z } from "zod";
import type { Habits } from "#lib/packing/habits";
import { formatLength, micrometres } from "#lib/units/length";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { lengthTyped, massTyped, wholeNumber } from "../../_parts/typed-fields";

const MOST_LAYERS = 9;
const MOST_STRIPS = 20;
const LARGEST_UM = 300_000;
const TOO_LONG = "At most 30 cm (12 in): check its unit.";
const PERCENT = "Write a share like 60 %.";
const ABOVE_ZERO = "Write more than zero.";

/** How a length stands in the form. */
export function lengthShown(um: number, measures: Measures): string {
  return formatLength(micrometres(Math.round(um)), measures);
}

/** How a mass stands in the form. */
export function massShown(mg: number, measures: Measures): string {
  return formatMass(milligrams(mg), measures);
}

/** How a share stands in the form. */
export function shareShown(share: number): string {
  return `${Math.round(share * 100)} %`;
}

/**
 * How a shop packs, as typed. What was left as it stood stays exactly as it was, whatever it was rounded to for show.
 *
 * @param now the habits that the form showed
 * @param measures how lengths and masses without a unit are read
 * @returns the form; it comes to whole habits
 */
export function habitsForm(now: Habits, measures: Measures) {
  const length = (um: number) =>
    lengthTyped(measures)
      .refine((read) => read.um <= LARGEST_UM, TOO_LONG)
      .transform((read) => (read.typed === lengthShown(um, measures) ? um : read.um));
  const mass = (mg: number) =>
    massTyped(measures).transform((read) => (read.typed === massShown(mg, measures) ? mg : read.mg));
  const layers = wholeNumber(1, MOST_LAYERS);
  const strips = wholeNumber(0, MOST_STRIPS);
  const manner = z.enum(["firm", "loose"], "Choose how.");
  const share = z
    .string(PERCENT)
    .regex(/^\d{1,3}\s*%?$/, PERCENT)
    .transform((text) =>
      text === shareShown(now.hollowShare) ? now.hollowShare : Number.parseInt(text, 10) / 100,
    )
    .refine((value) => value <= 1, "At most 100 %.");
  return z
    .object({
      sturdy: length(now.cushionUm.sturdy),
      usual: length(now.cushionUm.usual),
      thin: length(now.cushionUm.thin),
      heavyFrom: mass(now.heavyFromMg).refine((mg) => mg > 0, ABOVE_ZERO),
      smallBubble: layers,
      largeBubble: layers,
      paper: layers,
      overlap: length(now.overlapUm).refine((um) => um > 0, ABOVE_ZERO),
      hollowShare: share,
      hollowManner: manner,
      fillManner: manner,
      perWrap: strips,
      perGuard: strips,
      closing: z.enum(["single", "doubled-bottom", "h"], "Choose how cartons are closed."),
      papers: mass(now.papersMg),
    })
    .transform(
      (typed): Habits => ({
        ...now,
        cushionUm: { sturdy: typed.sturdy, usual: typed.usual, thin: typed.thin },
        heavyFromMg: typed.heavyFrom,
        layers: {
          ...now.layers,
          "small-bubble": typed.smallBubble,
          "large-bubble": typed.largeBubble,
          "packing-paper": typed.paper,
        },
        overlapUm: typed.overlap,
        hollowShare: typed.hollowShare,
        hollowManner: typed.hollowManner,
        fillManner: typed.fillManner,
        strips: { ...now.strips, perWrap: typed.perWrap, perGuard: typed.perGuard },
        closing: typed.closing,
        papersMg: typed.papers,
      }),
    );
}
