import type { Comparison } from "#lib/cushioning/comparison";
import type { DroppedStep } from "#lib/cushioning/dropped-step";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { stepWords } from "#lib/postage/step-words";
import { formatMass, milligrams } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { formatMoney } from "#lib/units/money";
import { untoldPostage } from "./untold-postage";

/** How a shop writes money and weights. */
export type MoneyAndMass = {
  readonly currency: string;
  readonly minorDigits: number;
  readonly measures: Measures;
};

const STYLE_NAMES: Readonly<Record<CushionStyle, string>> = {
  paper: "Paper",
  bubble: "Bubble",
  mixed: "The mixed way",
};

/**
 * Money in words.
 *
 * @param minor minor units, any fraction
 * @param shop its currency
 */
export function minorText(
  minor: number,
  { currency, minorDigits }: Pick<MoneyAndMass, "currency" | "minorDigits">,
): string {
  return formatMoney(Math.round(minor), currency, minorDigits);
}

/**
 * Why one way to pack is cheaper than another, in one sentence.
 *
 * @param comparison of the two
 * @param shop how it writes money and weights
 * @returns "Bubble saves 274 g, which brings 78 in 100 of these parcels under the 3 lb step."
 */
export function whyWords(comparison: Comparison, shop: MoneyAndMass): string {
  const { cheaper, dearer, decidedBy, savesMinor } = comparison;
  const untold = untoldPostage(comparison);
  if (untold !== null) {
    return `${STYLE_NAMES[untold]}’s postage is not known and counts as nothing here: the two can’t be held against each other yet.`;
  }
  if (Math.round(savesMinor) === 0) return "Both cost the same to the last coin.";
  const winner = STYLE_NAMES[cheaper.way.style];
  const loser = STYLE_NAMES[dearer.way.style].toLowerCase();
  const against = againstWords(comparison, shop);
  const counter = `${besidesWords(comparison, shop)}${against}`;
  switch (decidedBy) {
    case "postage":
      return `${winner} ${lighterWords(comparison, shop)}${counter}.`;
    case "materials":
      return `${winner}’s materials cost ${minorText(comparison.parts.materials, shop)} less${counter}${sameWords(comparison)}.`;
    case "minutes":
      return cheaper.minutesMinor === null
        ? `${winner}’s minutes are not said and count as none, against ${minorText(comparison.parts.minutes, shop)}${against}.`
        : `${winner} takes less of your time, worth ${minorText(comparison.parts.minutes, shop)}${counter}.`;
    case "breakage":
      return cheaper.breakageMinor === null
        ? `How often ${winner.toLowerCase()} breaks is not said and counts as never, against ${minorText(comparison.parts.breakage, shop)} for ${loser}${against}.`
        : `${winner} breaks less often than ${loser}, worth ${minorText(comparison.parts.breakage, shop)} by what you said${counter}.`;
    default:
      return decidedBy satisfies never;
  }
}

function lighterWords({ savedMg, dropped, parts }: Comparison, shop: MoneyAndMass): string {
  const postage = minorText(parts.postage, shop);
  // A smaller carton may cost less to send though it weighs more.
  if (savedMg === null || savedMg <= 0) return `pays ${postage} less postage`;
  const saved = `saves ${massText(savedMg, shop)}`;
  if (dropped === null || dropped.lighter === "other") return `${saved} and with it ${postage} of postage`;
  return `${saved}, which ${dropWords(dropped)}: ${postage} less postage`;
}

/**
 * How many parcels a lighter way brings under a step.
 *
 * @param dropped of `droppedStep`
 * @returns "brings 61 in 100 of these parcels under the 1 lb step"
 */
export function dropWords({ step, share }: DroppedStep): string {
  const words = stepWords(step);
  const under = step.band.name === "" ? `under the ${words.replace(/^up to /, "")} step` : `into ${words}`;
  return `brings ${shareText(share)} of these parcels ${under}`;
}

/**
 * A share of parcels: never more than the numbers bear.
 *
 * @param share 0 to 1
 * @returns "61 in 100", "nearly all"
 */
export function shareText(share: number): string {
  if (share >= 0.995) return "nearly all";
  return share < 0.01 ? "less than 1 in 100" : `${Math.round(share * 100)} in 100`;
}

/** What the cheaper way pays less for, beside the part that decides: else the numbers would not add up. */
function besidesWords({ parts, decidedBy }: Comparison, shop: MoneyAndMass): string {
  const words = {
    materials: "less for materials",
    postage: "less postage",
    minutes: "less of your time",
    breakage: "less of what breaks",
  };
  return (["materials", "postage", "minutes", "breakage"] as const)
    .filter((part) => part !== decidedBy && Math.round(parts[part]) > 0)
    .map((part) => `, and ${minorText(parts[part], shop)} ${words[part]}`)
    .join("");
}

/** What the cheaper way pays more for. */
function againstWords({ parts, decidedBy, savedMg }: Comparison, shop: MoneyAndMass): string {
  const isHeavier = savedMg !== null && savedMg < 0;
  const forWeight = isHeavier ? ` for ${massText(-savedMg, shop)} more weight` : "";
  const words = {
    materials: "more for materials",
    postage: `more postage${forWeight}`,
    minutes: "more of your time",
    breakage: "more of what breaks",
  };
  const against = (["materials", "postage", "minutes", "breakage"] as const).flatMap((part) =>
    part === decidedBy || Math.round(parts[part]) >= 0
      ? []
      : [`${minorText(-parts[part], shop)} ${words[part]}`],
  );
  return against.length === 0 ? "" : `, against ${against.join(" and ")}`;
}

function sameWords({ parts, dropped, cheaper, dearer }: Comparison): string {
  const isKnown = cheaper.postageMinor !== null && dearer.postageMinor !== null;
  if (!isKnown || Math.round(parts.postage) !== 0) return "";
  return dropped === null ? "; both pay each postage step as often" : "";
}

function massText(mg: number, { measures }: MoneyAndMass): string {
  return formatMass(milligrams(Math.round(mg)), measures);
}
