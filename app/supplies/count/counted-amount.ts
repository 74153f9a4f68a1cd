import { type PartReading, partsOnHand } from "#lib/packing/part-stock/part-reading";
import { AMOUNT_PER_UNIT, type Amount, amount, scaleAmount } from "#lib/units/amount";
import { parseAmount } from "#lib/units/amount-text";
import { formatLength, micrometres, parseLength } from "#lib/units/length";
import { parseMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import type { Supply } from "#prisma/records/supplies";
import type { CountMethod } from "./count-form";

/** What a line of the count comes to, or what can't be read and how to write it. */
export type CountedAmount =
  | {
      readonly kind: "amount";
      readonly amount: Amount;
      readonly typed: string;
      /** least and most that it may be, as a ruler or scale is misread; left out where nothing was measured */
      readonly range?: { readonly low: Amount; readonly high: Amount };
    }
  | { readonly kind: "unreadable"; readonly problem: string };

/** How far a ruler across a roll, one beside a pile and a kitchen scale are misread; common practice, no source. */
const ROLL_ERROR_UM = 3_175;
const PILE_ERROR_UM = 1_000;
const SCALE_ERROR_MG = 5_000;

/**
 * The amount that a counted line states: a number, the outer diameters of part rolls, the height of a pressed
 * pile, a weight, or the book's own figure.
 *
 * @param line the method and what was typed
 * @param supply the supply with its geometry
 * @param book what the book says, for "looks right"
 * @param measures how lengths without a unit are read
 * @returns the amount in the supply's use unit
 */
export function countedAmount(
  line: { readonly method: CountMethod; readonly typed: string | null },
  supply: Supply,
  book: Amount | null,
  measures: Measures,
): CountedAmount {
  const typed = line.typed ?? "";
  switch (line.method) {
    case "looks-right":
      return book === null
        ? unreadable(
            "This supply was never counted, so there is no figure that could look right. Count it once.",
          )
        : { kind: "amount", amount: book, typed: "looks right" };
    case "number":
      return byNumber(typed, supply, measures);
    case "roll":
      return byDiameters(typed, supply, measures);
    case "height":
      return byHeight(typed, supply, measures);
    case "weight":
      return byWeight(typed, supply, measures);
    default:
      return line.method satisfies never;
  }
}

/** What measured parts come to, with how far the measures may be off. */
function measured(readings: readonly PartReading[], typed: string): CountedAmount {
  const { amount: sum, low, high } = partsOnHand(readings);
  return { kind: "amount", amount: sum, typed, ...(low === high ? {} : { range: { low, high } }) };
}

function unreadable(problem: string): CountedAmount {
  return { kind: "unreadable", problem };
}

/** A number of use units; or of counted units, where their word stands behind it ("3 rolls"). */
function byNumber(typed: string, supply: Supply, measures: Measures): CountedAmount {
  // "2 full" can only be rolls, whichever way is chosen.
  if (supply.fullAmount !== null && /\d\s*full\b/i.test(typed)) return byDiameters(typed, supply, measures);
  const word = supply.countUnit?.split(" ")[0];
  const inWord =
    word === undefined ? null : new RegExp(`^(.+?)\\s*${escaped(word)}(?:e?s)?$`, "i").exec(typed);
  const read =
    inWord === null
      ? parseAmount(typed, supply.useUnit, measures)
      : parseAmount(inWord[1] ?? "", "each", measures);
  if (read.kind === "unreadable" || read.amount < 0) {
    return unreadable(`“${typed}” can’t be read. Write an amount like 174, 1 1/3 or 3 ft.`);
  }
  if (inWord === null || supply.countAmount === null) return { kind: "amount", amount: read.amount, typed };
  return { kind: "amount", amount: countedUnits(read.amount, supply.countAmount), typed };
}

/** So many rolls of so many feet. */
function countedUnits(count: Amount, each: Amount): Amount {
  return amount(Math.round((count / AMOUNT_PER_UNIT) * each));
}

function escaped(word: string): string {
  return word.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
}

/** Rolls by outer diameter, summed: "12 in + 8 in"; full ones by number: "2 full + 12 in". */
function byDiameters(typed: string, supply: Supply, measures: Measures): CountedAmount {
  const { coreUm, fullUm, fullAmount } = supply;
  if (coreUm === null || fullUm === null || fullAmount === null) {
    return unreadable(
      "This supply has no roll sizes yet. Write them under its sizes, or count it as a number.",
    );
  }
  const rolls: PartReading[] = [];
  for (const part of typed.split(/\+|;|\band\b/)) {
    const full = /^(\d+)\s*full$/i.exec(part.trim());
    if (full !== null) {
      rolls.push({ by: "count", amount: scaleAmount(fullAmount, Number(full[1])) });
      continue;
    }
    const read = parseLength(part.trim(), measures);
    if (read.kind === "unreadable")
      return unreadable(`“${part.trim()}” can’t be read. Write 12 in + 8 in, or 2 full + 12 in.`);
    if (read.um < coreUm || read.um > fullUm) {
      const limits = `${formatLength(micrometres(coreUm), measures)} (the bare core) and ${formatLength(micrometres(fullUm), measures)} (full)`;
      return unreadable(`“${part.trim()}” is no roll of this supply: its diameter lies between ${limits}.`);
    }
    rolls.push({ by: "roll-diameter", outerUm: read.um, coreUm, fullUm, fullAmount, errorUm: ROLL_ERROR_UM });
  }
  return measured(rolls, typed);
}

/** A pressed pile by its height. */
function byHeight(typed: string, supply: Supply, measures: Measures): CountedAmount {
  if (supply.sheetNm === null)
    return unreadable("This supply has no sheet thickness yet. Count it as a number.");
  const read = parseLength(typed, measures);
  if (read.kind === "unreadable")
    return unreadable(`“${typed}” can’t be read. Write a height like 0.9 in or 23 mm.`);
  const pile = { heightUm: read.um, sheetNm: supply.sheetNm, errorUm: PILE_ERROR_UM };
  return measured([{ by: "pile-height", ...pile }], typed);
}

/** A pile, or a roll with its core, by weight. */
function byWeight(typed: string, supply: Supply, measures: Measures): CountedAmount {
  if (supply.massMg === null) return unreadable("The weight of one is not known yet. Count it as a number.");
  const read = parseMass(typed, measures);
  if (read.kind === "unreadable")
    return unreadable(`“${typed}” can’t be read. Write a weight like 6.35 kg or 2 lb 15 oz.`);
  const coreMg = supply.coreMassMg;
  const weighed = { grossMg: read.mg, massMg: supply.massMg, errorMg: SCALE_ERROR_MG };
  if (coreMg === null) return measured([{ by: "pile-weight", ...weighed, wrapperMg: 0 }], typed);
  if (read.mg < coreMg) return unreadable(`“${typed}” is less than the empty core of this roll weighs.`);
  return measured([{ by: "roll-weight", ...weighed, coreMg }], typed);
}
