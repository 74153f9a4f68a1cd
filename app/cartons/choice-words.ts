import type { CartonChoice } from "#lib/cartons/choice/carton-choice";
import type { CutDown } from "#lib/cartons/choice/cut-down";
import type { LeftOutReason } from "#lib/cartons/choice/left-out";
import type { LoadLimit } from "#lib/cartons/strength/load-limit";
import { ratioNumber, ratioText } from "#lib/postage/ratio";
import { formatLength, MICROMETRES_PER_INCH, micrometres } from "#lib/units/length";
import { formatMass, MILLIGRAMS_PER_POUND, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { formatMoney } from "#lib/units/money";

const VALUE_PER_MINOR = 10_000;

/** How a shop writes money, sizes and weights. */
export type ShopWords = {
  readonly currency: string;
  readonly minorDigits: number;
  readonly measures: Measures;
};

/**
 * Money in words.
 *
 * @param value 1/10,000 minor unit
 * @param shop how it writes money
 */
export function valueText(value: number, { currency, minorDigits }: ShopWords): string {
  return formatMoney(Math.round(value / VALUE_PER_MINOR), currency, minorDigits);
}

/**
 * Why a carton is offered, in one line.
 *
 * @param choice an answer
 * @param shop how it writes money and sizes
 * @returns one sentence
 */
export function choiceReason(choice: CartonChoice, shop: ShopWords): string {
  switch (choice.why) {
    case "cheapest":
      return choice.isToUseUp
        ? "Cheapest of what is there, and it uses up what sits."
        : "Cheapest of what is there.";
    case "toUseUp":
      return `Uses up what sits: ${moreWords(choice, shop)}.`;
    case "cutDown":
      return `Cut down to ${heightText(choice.cut, shop)} inside: ${cutWords(choice.cut, shop)}.`;
    case "notOnHand":
      return choice.more === null
        ? "None of it is there, but nothing that is there would do."
        : `None of it is there; it would save ${valueText(-choice.more.value, shop)}.`;
    default:
      return choice satisfies never;
  }
}

/** What a carton to be used up costs against the cheapest: with its own price, and with that taken as spent. */
function moreWords({ more }: CartonChoice, shop: ShopWords): string {
  if (more === null) return "nothing else that is there would do";
  const against = (value: number) =>
    value >= 0 ? `${valueText(value, shop)} more` : `${valueText(-value, shop)} less`;
  const spent = `${against(more.asSpentValue)} than the cheapest if its own price counts as spent`;
  return more.value === more.asSpentValue ? spent : `${spent}, ${against(more.value)} if not`;
}

/**
 * What cutting a carton down saves.
 *
 * @param cut how it is cut
 * @param shop how it writes money and sizes
 * @returns words without a full stop
 */
export function cutWords(cut: CutDown, shop: ShopWords): string {
  const lighter = formatMass(milligrams(Math.round(cut.boardSavedMg)), shop.measures);
  const postage =
    cut.postageSavedValue !== null && cut.postageSavedValue > 0
      ? ` and ${valueText(cut.postageSavedValue, shop)} postage`
      : "";
  const minutes = `about ${cut.minutes} ${cut.minutes === 1 ? "minute" : "minutes"}`;
  return `saves ${valueText(cut.fillSavedValue, shop)} of fill${postage}, ${lighter} of board; ${minutes}, a guess${cut.least === "bestFound" ? "; a lower cut may do" : ""}`;
}

/** The height to cut to. */
export function heightText({ heightUm }: Pick<CutDown, "heightUm">, { measures }: ShopWords): string {
  return formatLength(micrometres(heightUm), measures);
}

/**
 * Why a carton is not offered.
 *
 * @param reason as found
 * @param shop how it writes money
 * @returns words without a full stop
 */
export function leftOutWords(reason: LeftOutReason, shop: ShopWords): string {
  switch (reason.kind) {
    case "innerOnly":
      return reason.reason === "unrated"
        ? "has no rating: an inner box, not one to send in"
        : "its board is too weak to send fragile goods in: an inner box";
    case "over":
      return limitWords(reason.limit, shop.measures);
    case "noPostage":
      return "no price is known for its size";
    case "notOnHand":
      return `none is there; it would save ${valueText(reason.savesValue, shop)}`;
    case "notProven":
      return "whether they fit could not be told: try it with the pieces in hand";
    case "doesNotFit":
      return fitWords(reason.reason.kind);
    default:
      return reason satisfies never;
  }
}

const MEASURE_WORDS: Readonly<Record<LoadLimit["measure"], string>> = {
  weight: "gross",
  unitedInches: "of length, width and height together",
  lengthAndGirth: "of length and girth",
};

/** Limits are in pounds and inches, as they are printed; a metric shop reads what they come to beside it. */
function limitWords({ rule, measure, limit, actual }: LoadLimit, measures: Measures): string {
  const who = rule === "certificate" ? "its rating" : "the post's rule for fragile goods";
  const unit = measure === "weight" ? "lb" : "in";
  // Rounded up: what is over by little must not read as the limit itself.
  const tenths = (actual.numerator * 10n + actual.denominator - 1n) / actual.denominator;
  const metric =
    measure === "weight"
      ? formatMass(milligrams(Math.floor(ratioNumber(limit) * MILLIGRAMS_PER_POUND)), measures)
      : formatLength(micrometres(Math.floor(ratioNumber(limit) * MICROMETRES_PER_INCH)), measures);
  const also = measures === "metric" ? ` (${metric})` : "";
  return `${who} allows ${ratioText(limit)} ${unit}${also} ${MEASURE_WORDS[measure]}, this would be ${Number(tenths) / 10} ${unit}`;
}

type DoesNotFit = Extract<LeftOutReason, { readonly kind: "doesNotFit" }>["reason"]["kind"];

const FIT_WORDS: Readonly<Record<DoesNotFit, string>> = {
  "no-room": "the cushion alone fills it",
  "piece-too-large": "one piece is too large for it, however it is turned",
  volume: "the pieces are more than it holds",
  "two-too-large": "two of the pieces find no room beside each other",
  rows: "the pieces in a row take more than it has",
  "all-searched": "every arrangement was tried: they do not fit",
};

function fitWords(kind: DoesNotFit): string {
  return FIT_WORDS[kind];
}
