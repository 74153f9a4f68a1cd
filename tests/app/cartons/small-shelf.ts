import { sizedCarton } from "#app/cartons/carton-board.ts";
import { type ShelfCarton, type ShelfTerms, shelfCarton } from "#app/cartons/shelf-carton.ts";
import { AGEING } from "#lib/cartons/keeping/ageing";
import { amountOfUnits } from "#lib/units/amount";
import { day, daysBetween } from "#lib/units/day";
import type { ItemType } from "#prisma/records/item-types";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Stock, Supply } from "#prisma/records/supplies";
import { inches } from "../../lib/cartons/choice/mug-bench";

export const TODAY = day("2026-03-31");
/** Pounds a square foot of single wall board: from memory. */
const BOARD_POUNDS = 0.115;

/** An invented shop's way to write. */
export const DOLLARS = { currency: "USD", minorDigits: 2, measures: "imperial" } as const;

/** A single wall carton by its inside sizes in inches, with its stamp, changed as the test wants. */
export function cartonSupply(
  id: string,
  sides: readonly [number, number, number],
  change: Partial<Supply> = {},
): Supply {
  const sized = { ...PLAIN_SUPPLY, ...inches(...sides), rating: "32 ECT", wall: "single", flutes: "C" };
  return { ...sized, id, name: `Carton ${sides.join(" × ")}`, kind: "carton", useUnit: "each", ...change };
}

/** So many counted, at a cost in the books in 1/10,000 minor unit. */
export function counted(supplyId: string, cartons: number, unitCost: number | null = null): Stock {
  const countedAt = "2026-03-01T09:00:00.000Z";
  return { supplyId, amount: amountOfUnits(cartons), countedAt, unitCost, value: 0 };
}

/** A shop watched for a year that used nothing, ordered nothing and knows no price. */
export const QUIET: ShelfTerms = {
  today: TODAY,
  watchedFrom: day("2025-04-01"),
  useDays: new Map(),
  stock: new Map(),
  onOrder: new Map(),
  replacement: new Map(),
  ageing: AGEING,
  holdingPerMille: 200,
  orderCostMinor: 500,
  openDays: daysBetween,
};

/** A carton on the shelf, judged as the test wants. */
export function onShelf(supply: Supply, terms: Partial<ShelfTerms> = {}): ShelfCarton {
  const sized = sizedCarton(supply, 0, BOARD_POUNDS);
  if (sized === null) throw new RangeError(`${supply.id} has no sizes`);
  return shelfCarton(sized, { ...QUIET, ...terms });
}

/** An item type by its outer sizes in inches, 370 g, never described. */
export function typeOf(id: string, sides: readonly [number, number, number] | null): ItemType {
  const none = { lengthUm: null, widthUm: null, heightUm: null };
  return {
    ...{ id, name: id, massMg: 370_000, massTyped: null, sizesTyped: null, note: null },
    ...(sides === null ? none : inches(...sides)),
    ...{ retired: false, position: 0, piece: null, valueMinor: null },
  };
}
