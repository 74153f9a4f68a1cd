import type { WayCost } from "#lib/cushioning/way-cost";
import type { Supply } from "#prisma/records/supplies";

/** More prices than this nobody tries at a time. */
const MOST = 4;
/** Taken as the card says whatever the cushion is. */
const NOT_CUSHION = new Set(["carton", "tape"]);
const ALIKE = 1e-9;

/**
 * The supplies whose price may turn the choice: the ways take more or less of them.
 *
 * @param kinds parcels with their ways
 * @param supplies of the shop
 * @returns those that differ most over all parcels, in use units, first; at most four
 */
export function triedSupplies(
  kinds: readonly { readonly parcels: number; readonly costs: readonly WayCost[] }[],
  supplies: readonly Supply[],
): Supply[] {
  const differences = supplies.map((supply) => {
    const sum = kinds.reduce((all, { parcels, costs }) => {
      const units = costs.map(({ way }) => way.takes.get(supply.id) ?? 0);
      return units.length < 2 ? all : all + parcels * (Math.max(...units) - Math.min(...units));
    }, 0);
    return { supply, sum };
  });
  return differences
    .filter(({ supply, sum }) => sum > ALIKE && !NOT_CUSHION.has(supply.kind))
    .toSorted((a, b) => b.sum - a.sum)
    .slice(0, MOST)
    .map(({ supply }) => supply);
}
