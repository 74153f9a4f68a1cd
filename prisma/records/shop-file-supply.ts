import { parseSizes } from "#lib/units/length";
import { parseMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { ShopFile } from "#prisma/records/shop-file-schema";
import type { Supply } from "#prisma/records/supplies";

/**
 * Writes a supply of a shop file as the shop's own record.
 *
 * @param supply - the supply as the file has it, its texts already found readable
 * @param position - its place in the list
 * @param measures - the shop's measures, for numbers without a unit
 * @returns the record to save: lengths in micrometres, mass in milligrams
 * @example supplyOfShopFile({ id: "tissue", name: "Tissue", kind: "tissue", unit: "sheet" }, 0, "imperial");
 */
export function supplyOfShopFile(
  supply: ShopFile["supplies"][number],
  position: number,
  measures: Measures,
): Supply {
  const mass = supply.mass === undefined ? null : parseMass(supply.mass, measures);
  const sizes = supply.sizes === undefined ? null : parseSizes(supply.sizes, measures);
  const [length = null, width = null, height = null] = sizes?.kind === "sizes" ? sizes.um : [];
  return {
    ...PLAIN_SUPPLY,
    id: supply.id,
    name: supply.name,
    kind: supply.kind,
    useUnit: supply.unit,
    massMg: mass?.kind === "mass" ? mass.mg : null,
    massTyped: supply.mass ?? null,
    lengthUm: length,
    widthUm: width,
    heightUm: height,
    sizesTyped: supply.sizes ?? null,
    goal: supply.goal?.kind ?? null,
    goalPerMille: supply.goal?.perMille ?? null,
    shelfLifeDays: supply.shelfLifeDays ?? null,
    lastUseOn: supply.lastUseOn ?? null,
    position,
  };
}
