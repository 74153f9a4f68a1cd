import { type Amount, amountOfUnits } from "#lib/units/amount";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Supply } from "#prisma/records/supplies";
import type { StarterSupply } from "#prisma/starter/starter-supply";

const MICROMETRES_PER_INCH = 25_400;

/**
 * Writes a starter supply as the shop's own record, marked as guessed.
 *
 * @param starter - the starter supply
 * @param position - its place in the list
 * @returns the record to save: lengths in micrometres, mass in milligrams, amounts in 1/12,000 use unit
 * @example supplyOfStarter(starterSupply("tissue"), 0).massMg; // 6600
 */
export function supplyOfStarter(starter: StarterSupply, position: number): Supply {
  const [length, width, height] = starter.inches;
  return {
    ...PLAIN_SUPPLY,
    id: starter.id,
    name: starter.name,
    kind: starter.kind,
    material: starter.material ?? null,
    useUnit: starter.unit,
    countUnit: starter.counted?.word ?? null,
    countAmount: units(starter.counted?.units),
    massMg: starter.massMg,
    massTyped: `${starter.massMg / 1000} g`,
    lengthUm: micrometres(length),
    widthUm: micrometres(width),
    heightUm: micrometres(height),
    sizesTyped: starter.inches.length === 0 ? null : starter.inches.join(" x "),
    coreUm: micrometres(starter.roll?.coreInches),
    fullUm: micrometres(starter.roll?.fullInches),
    fullAmount: units(starter.roll?.fullUnits),
    sheetNm: starter.sheetNm ?? null,
    wall: starter.kind === "carton" ? "single" : null,
    guessed: true,
    note: starter.note,
    position,
  };
}

function micrometres(inches: number | undefined): number | null {
  return inches === undefined ? null : Math.round(inches * MICROMETRES_PER_INCH);
}

function units(count: number | undefined): Amount | null {
  return count === undefined ? null : amountOfUnits(count);
}
