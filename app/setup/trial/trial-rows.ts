import type { Estimate } from "#lib/replenishment/simulation/estimate";
import type { Compared } from "#lib/replenishment/trial/trial-steps";
import { less, SURE_ERRORS } from "#lib/replenishment/trial/trial-verdict";
import type { MoneyWords } from "./money-words";

const PER_CENT = 100;

/** A figure with how far chance can move it. */
export type Figure = { readonly value: string; readonly within: string };

/** A row of the comparison. */
export type TrialRow = {
  readonly label: string;
  readonly about: string;
  readonly present: Figure;
  readonly tried: Figure;
  readonly difference: Figure & { readonly isChance: boolean };
};

/** How a kind of figure is written, without its sign, beside another figure of the same row. */
type Written = (value: number, beside: number) => string;

const NO_BREAK = "\u00a0";
const counted: Written = (value) => Math.abs(value).toFixed(1);
const percent: Written = (value) => `${inPercent(value)}${NO_BREAK}%`;
/** Two shares differ by points, not by per cent of one of them. */
const points: Written = (value) => `${inPercent(value)}${NO_BREAK}points`;
const litres: Written = (value) => `${Math.round(Math.abs(value)).toLocaleString("en-US")}${NO_BREAK}l`;

function inPercent(value: number): string {
  return (PER_CENT * Math.abs(value)).toFixed(1);
}

/**
 * The six figures of a comparison that say most.
 *
 * @param shop both settings and their difference
 * @param money words for money
 */
export function mainRows(shop: Compared, money: MoneyWords): TrialRow[] {
  return [
    row(shop, "daysOut", { label: "Days without a supply", about: "each supply’s days, added up" }, counted),
    row(shop, "filledShare", { label: "Need met from stock", about: "by what it is worth" }, percent),
    row(shop, "orders", { label: "Orders", about: "one for each delivery" }, counted),
    row(shop, "deliveryCost", { label: "Delivery", about: "what suppliers charge" }, money),
    row(shop, "meanValue", { label: "Money tied up", about: "in stock, on average" }, money),
    row(
      shop,
      "cost",
      {
        label: "Cost besides the goods",
        about: "delivery, work of ordering, keeping stock, price breaks missed or reached",
      },
      money,
    ),
  ].flat();
}

/**
 * The figures for who asks for more.
 *
 * @param shop both settings and their difference
 * @param question words for money, and whether the room of every pack is known
 */
export function furtherRows(
  shop: Compared,
  { money, hasRoom }: { readonly money: MoneyWords; readonly hasRoom: boolean },
): TrialRow[] {
  return [
    row(
      shop,
      "cycleService",
      { label: "Order cycles without a shortage", about: "from one delivery to the next" },
      percent,
    ),
    row(shop, "goodsCost", { label: "Goods bought", about: "some of them left at the end" }, money),
    row(shop, "peakValue", { label: "Most money tied up", about: "on the fullest day" }, money),
    ...(hasRoom ? row(shop, "meanLitres", { label: "Room taken", about: "on average" }, litres) : []),
  ].flat();
}

/** None where a figure is not known. */
function row(
  shop: Compared,
  name: keyof Compared["present"],
  words: { readonly label: string; readonly about: string },
  written: Written,
): TrialRow[] {
  const [present, tried, difference] = [shop.present[name], shop.tried[name], shop.difference[name]];
  if (present === null || tried === null || difference === null) return [];
  const beside = Math.max(Math.abs(present.mean), Math.abs(tried.mean));
  const apart = written === percent ? points : written;
  const change = apart(difference.mean, beside);
  return [
    {
      ...words,
      present: figure(present, written, beside),
      tried: figure(tried, written, beside),
      difference: {
        // What is written as 0 has no sign.
        value: `${change === apart(0, beside) ? "" : signOf(difference.mean)}${change}`,
        within: within(difference, apart, beside),
        isChance: less(difference) === "alike",
      },
    },
  ];
}

function figure(estimate: Estimate, written: Written, beside: number): Figure {
  const minus = estimate.mean < 0 ? "−" : "";
  return {
    value: `${minus}${written(estimate.mean, beside)}`,
    within: within(estimate, written, beside),
  };
}

function within({ standardError }: Estimate, written: Written, beside: number): string {
  return `±${NO_BREAK}${written(SURE_ERRORS * standardError, beside)}`;
}

function signOf(mean: number): string {
  return mean < 0 ? "−" : "+";
}
