import type { Amount } from "#lib/units/amount";
import { formatAmount } from "#lib/units/amount-text";
import { type Day, daysBetween } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { unitWord } from "#lib/units/use-unit";
import type { Supply } from "#prisma/records/supplies";
import { countUnitWords } from "../count-unit-words";
import type { CountMethod } from "./count-form";

/** One line of the counting walk, ready to show. */
export type CountLineView = {
  readonly supplyId: string;
  readonly name: string;
  /** What the book says: "book 61 sq ft, counted 23 Oct". */
  readonly book: string;
  readonly isCountedToday: boolean;
  readonly isNeverCounted: boolean;
  readonly methods: readonly { readonly value: CountMethod; readonly words: string }[];
  readonly hint: string | undefined;
};

/**
 * The counting line of a supply: what the book says and the ways this supply can be counted.
 *
 * @param supply the supply with its geometry
 * @param stock what the book says; `countedDay` null where it was never counted
 * @param today the shop's day
 * @returns the line
 */
export function countLineView(
  supply: Supply,
  stock: { readonly amount: Amount | null; readonly countedDay: Day | null },
  today: Day,
): CountLineView {
  const isNeverCounted = stock.countedDay === null;
  return {
    supplyId: supply.id,
    name: supply.name,
    book:
      stock.countedDay === null || stock.amount === null
        ? "never counted"
        : `book ${formatAmount(stock.amount, supply.useUnit)}, counted ${dayWords(stock.countedDay, today)}`,
    isCountedToday: stock.countedDay === today,
    isNeverCounted,
    methods: methodsOf(supply),
    hint: hintOf(supply),
  };
}

function dayWords(counted: Day, today: Day): string {
  return counted === today ? "today" : formatDay(counted, { year: daysBetween(counted, today) > 300 });
}

/** A way is offered only where the supply has the figures that it needs. */
function methodsOf(supply: Supply): CountLineView["methods"] {
  return [
    {
      value: "number",
      words: supply.countUnit === null ? "a number" : `a number, or ${countUnitWords(supply.countUnit)}`,
    },
    ...(canRoll(supply) ? [{ value: "roll" as const, words: "outer diameter of each roll" }] : []),
    ...(supply.sheetNm === null ? [] : [{ value: "height" as const, words: "height of the pressed pile" }]),
    ...(supply.massMg === null || supply.kind === "carton"
      ? []
      : [{ value: "weight" as const, words: "weight" }]),
  ];
}

/** An example for each way, beginning with the unit that a bare number is read in; none where a number is all there is. */
function hintOf(supply: Supply): string | undefined {
  const counted = supply.countUnit === null ? "" : ` or 3 ${countUnitWords(supply.countUnit).split(" ")[0]}`;
  const number = `${unitWord(supply.useUnit, 2)}${counted}`.trim();
  const ways = [
    number === "" ? "" : `A number: 174 ${number}`,
    canRoll(supply) ? "rolls across: 2 full + 12 in" : "",
    supply.sheetNm === null ? "" : "pile: 0.9 in",
  ].filter((way) => way !== "");
  return ways.length === 0 ? undefined : `${ways.join("; ")}.`;
}

function canRoll(supply: Supply): boolean {
  return supply.coreUm !== null && supply.fullUm !== null && supply.fullAmount !== null;
}
