import { amountLeftOnRoll } from "#lib/packing/part-roll";
import { misread, type PartStock, sumOfParts } from "#lib/packing/part-stock/part-stock";
import { pileByHeight } from "#lib/packing/pile-by-height";
import { pileByWeight } from "#lib/packing/pile-by-weight";
import { rollByWeight } from "#lib/packing/roll-by-weight";
import type { Amount } from "#lib/units/amount";

/**
 * How an open roll or pile was measured, each with its own sizes and with the error of ruler or scale: by its diameter
 * (bubble, paper, carton tape), by weight, by the height of a pressed pile, or counted whole.
 */
export type PartReading =
  | {
      readonly by: "roll-diameter";
      readonly outerUm: number;
      readonly coreUm: number;
      readonly fullUm: number;
      readonly fullAmount: Amount;
      readonly errorUm: number;
    }
  | {
      readonly by: "roll-weight";
      readonly grossMg: number;
      readonly coreMg: number;
      readonly massMg: number;
      readonly errorMg: number;
    }
  | {
      readonly by: "pile-weight";
      readonly grossMg: number;
      readonly wrapperMg: number;
      readonly massMg: number;
      readonly errorMg: number;
    }
  | {
      readonly by: "pile-height";
      readonly heightUm: number;
      readonly sheetNm: number;
      readonly errorUm: number;
    }
  | { readonly by: "count"; readonly amount: Amount };

/**
 * What is left of one supply in all its open rolls and piles, with the error of the readings.
 *
 * @param readings - rolls and piles open at once; may be empty
 * @returns the sum, with the least and most that it may be
 * @throws RangeError if a reading cannot be (a roll wider than full, lighter than its core)
 * @see computed from the formulas of roll and pile
 * @example partsOnHand([{ by: "roll-diameter", outerUm: 304800, coreUm: 76200, fullUm: 469900,
 *   fullAmount: amountOfUnits(175), errorUm: 3175 }]) // 70.9 ft, between 69 and 72
 */
export function partsOnHand(readings: readonly PartReading[]): PartStock {
  return sumOfParts(readings.map(partOnHand));
}

function partOnHand(reading: PartReading): PartStock {
  switch (reading.by) {
    case "roll-diameter":
      return misread(
        {
          reading: reading.outerUm,
          error: reading.errorUm,
          least: reading.coreUm,
          most: reading.fullUm,
        },
        (outerUm) => amountLeftOnRoll({ ...reading, outerUm }),
      );
    case "roll-weight":
      return misread(weighed(reading, reading.coreMg), (grossMg) => rollByWeight({ ...reading, grossMg }));
    case "pile-weight":
      return misread(weighed(reading, reading.wrapperMg), (grossMg) => pileByWeight({ ...reading, grossMg }));
    case "pile-height":
      return misread(
        {
          reading: reading.heightUm,
          error: reading.errorUm,
          least: 0,
          most: Number.MAX_SAFE_INTEGER,
        },
        (heightUm) => pileByHeight({ ...reading, heightUm }),
      );
    case "count":
      return { amount: reading.amount, low: reading.amount, high: reading.amount };
    default:
      return reading satisfies never;
  }
}

function weighed(
  { grossMg, errorMg }: { readonly grossMg: number; readonly errorMg: number },
  tareMg: number,
): Parameters<typeof misread>[0] {
  return { reading: grossMg, error: errorMg, least: tareMg, most: Number.MAX_SAFE_INTEGER };
}
