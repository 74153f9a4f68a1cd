import { cartonCompression } from "#lib/cartons/strength/box-compression";
import { certificateLimit } from "#lib/cartons/strength/certificate-limit";
import { dropHeights } from "#lib/cartons/strength/drop-heights";
import { liftingAdvice } from "#lib/cartons/strength/lifting";
import { postalLimit } from "#lib/cartons/strength/postal-grade";
import { stackHeight } from "#lib/cartons/strength/stack-height";
import { trustOf, USUAL_TRUST } from "#lib/cartons/strength/trusted-board";
import type { Block } from "#lib/packing/block";
import {
  bareLengthUnit,
  formatLength,
  formatSizes,
  MICROMETRES_PER_INCH,
  micrometres,
} from "#lib/units/length";
import { formatMass, MILLIGRAMS_PER_POUND, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { formatVolume } from "#lib/units/volume";
import { movingWords } from "./ageing-words";
import { type ShopWords, valueText } from "./choice-words";
import { pileWords } from "./pile-words";
import type { ShelfCarton } from "./shelf-carton";

/** A fact with its name. */
export type Fact = { readonly name: string; readonly words: string };

/** A pile in a dry room for a month: what a home does. A guess. */
const USUAL_PILE = { days: 30, humidityPercent: 50, offsetPercent: 0 };

/**
 * What is known of a carton: sizes, weight, what it bears, use, money and room.
 *
 * @param carton a carton of the shelf
 * @param shop how it writes money and sizes
 * @param grossMg what a packed one usually weighs, milligrams; null where none was weighed
 */
export function cartonFacts(carton: ShelfCarton, shop: ShopWords, grossMg: number | null): Fact[] {
  const { inside, outside, isOutsideMeasured, massMg, isMassGuess, idle, value, onHand } = carton;
  const { in30Days, in90Days, in365Days } = idle.use;
  const { measures } = shop;
  const used = [in30Days, in90Days, in365Days].map((each) => Math.round(each));
  const money =
    value === null || idle.money === null
      ? "price not known"
      : `${valueText(idle.money, shop)} on the shelf, ${valueText(value, shop)} each`;
  return [
    { name: "On the shelf", words: movingWords(carton) },
    { name: "Used", words: `${used[0]} in 30 days, ${used[1]} in 90, ${used[2]} in a year` },
    {
      name: "Money and room",
      words: `${money}${idle.roomMl === null || (onHand ?? 0) <= 0 ? "" : `; ${formatVolume(Math.round(idle.roomMl), measures)} flat, a guess`}`,
    },
    { name: "Inside", words: sizesText(inside, measures) },
    {
      name: "Outside",
      words: `${sizesText(outside, measures)}, ${isOutsideMeasured ? "as measured" : "by its board"}: what postage is charged for`,
    },
    {
      name: "Empty",
      words: `${formatMass(milligrams(Math.round(massMg)), measures)}${isMassGuess ? ", a guess by its board: weigh one" : ""}`,
    },
    ...strengthFacts(carton, measures, grossMg),
  ];
}

function strengthFacts(carton: ShelfCarton, measures: Measures, grossMg: number | null): Fact[] {
  const { rating, isRatingKnown, supply, inside, boardUm } = carton;
  const limit = certificateLimit(rating);
  if (limit.kind === "none") {
    return [
      {
        name: "Bears",
        words: "no rating that counts for sending: use it as an inner box",
      },
    ];
  }
  const { percent } = trustOf(supply.boardUsed ? "reused" : "new", USUAL_TRUST);
  const pounds = (of: number) =>
    formatMass(milligrams(Math.round((of * MILLIGRAMS_PER_POUND * percent) / 100)), measures);
  const fragile = postalLimit(rating, "difficult");
  const { row } = limit;
  const unknown = isRatingKnown
    ? ""
    : "; its stamp is not written down, so the usual one is taken: look at it";
  const worn = percent < 100 ? `; used board, counted as ${percent} % of its rating, a guess` : "";
  return [
    {
      name: "Bears",
      words: `${pounds(row.grossPounds)} gross, up to ${formatLength(micrometres(row.unitedInches * MICROMETRES_PER_INCH), measures)} of length, width and height together${fragile.kind === "limit" ? `; fragile goods ${pounds(fragile.pounds)}` : "; no fragile goods"}${worn}${unknown}`,
    },
    ...handlingFact(grossMg, measures),
    ...stackFact(grossMg, {
      compression: cartonCompression({ rating, inside, boardUm }),
      percent,
      measures,
      outsideHeightUm: carton.outside.heightUm,
    }),
  ];
}

/** How a packed one is lifted, and from what heights it is tested to fall. */
function handlingFact(grossMg: number | null, measures: Measures): Fact[] {
  if (grossMg === null) return [];
  const gross = milligrams(Math.round(grossMg));
  const { ista1aInches } = dropHeights(gross);
  const lift = {
    alone: "one person lifts it",
    heavy: "heavy for one person",
    help: "lift it with help",
  }[liftingAdvice(gross, measures)];
  const fall =
    ista1aInches === null
      ? ""
      : `; packages of this weight are dropped from ${formatLength(micrometres(ista1aInches * MICROMETRES_PER_INCH), measures)} in a common test, so pack it to survive that`;
  return [{ name: "Packed", words: `about ${formatMass(gross, measures)}: ${lift}${fall}` }];
}

function stackFact(
  grossMg: number | null,
  of: {
    readonly compression: ReturnType<typeof cartonCompression>;
    readonly percent: number;
    readonly measures: Measures;
    readonly outsideHeightUm: number;
  },
): Fact[] {
  if (of.compression === null || grossMg === null) return [];
  const stack = stackHeight({
    compression: of.compression,
    grossMg: milligrams(Math.round(grossMg)),
    conditions: USUAL_PILE,
    trustedPercent: of.percent,
  });
  if (stack.kind !== "stack") return [];
  const each = formatMass(milligrams(Math.round(grossMg)), of.measures);
  return [
    {
      name: "Stack",
      words: `${pileWords(stack.cartons, of.outsideHeightUm)} for a month in a dry room, at ${each} each and half of the strength kept back: a rough figure; a damp or crooked pile bears far less`,
    },
  ];
}

function sizesText({ lengthUm, widthUm, heightUm }: Block, measures: Measures): string {
  const sides = [lengthUm, widthUm, heightUm].map((side) => micrometres(Math.round(side)));
  return `${formatSizes(sides, measures)} ${bareLengthUnit(measures)}`;
}
