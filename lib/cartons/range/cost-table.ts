import { type CartonTerms, cartonCost } from "#lib/cartons/cost/carton-cost";
import type { OfferedCarton, PackedLoad } from "#lib/cartons/cost/packed-load";
import type { FitEffort } from "#lib/cartons/fit/fit-effort";
import type { Clearance } from "#lib/cartons/fit/fit-question";
import { type Holding, heldBy } from "#lib/cartons/range/held-by";
import { mergedRows } from "#lib/cartons/range/merged-rows";
import { checkedTable, type RangeRow, type RangeTable } from "#lib/cartons/range/range-table";

/** Parcels of the past that were all packed with the same load. */
export type RangeLoad = {
  readonly load: PackedLoad;
  readonly parcels: number;
  /** left free round this load; else that of the terms */
  readonly clearance?: Clearance;
};

/** What packing costs by, and what counts as fitting. */
export type RangeTerms = CartonTerms & {
  readonly clearance: Clearance;
  readonly effort: FitEffort;
  /** what a parcel counts that no stocked size holds, 1/10,000 minor units: at least the dearest that is held */
  readonly unpackedValue: number;
};

/** The table, and what is not sure in it. */
export type CostTable = {
  readonly table: RangeTable;
  /** for each candidate the parcels of which it was neither found nor disproved that they fit; counted as not fitting */
  readonly notProven: readonly number[];
  /** for each candidate the parcels that fit but have a known postage in other candidates only; counted as not fitting */
  readonly noPostage: readonly number[];
};

/**
 * What the parcels of a year cost in each candidate carton. Loads of the same pieces share their fits, and parcels of
 * equal costs become one row. Where no postage is known for a load in any candidate, its costs are of the materials.
 *
 * @param loads what was packed, and how often
 * @param candidates cartons that could be stocked
 * @param terms costs, clearance and effort
 * @returns the table; costs to the nearest 1/10,000 minor unit
 * @throws RangeError for a load, carton or term that makes no sense, or an unpacked value below a packed one
 * @example costTable([{ load: mugLoad, parcels: 12 }], [cube6, cube8], terms).table.rows
 */
export function costTable(
  loads: readonly RangeLoad[],
  candidates: readonly OfferedCarton[],
  terms: RangeTerms,
): CostTable {
  const insides = candidates.map(({ inside }) => inside);
  const fits = new Map<string, readonly Holding[]>();
  const notProven = candidates.map(() => 0);
  const noPostage = candidates.map(() => 0);
  const rows = loads.map(({ load, parcels, clearance = terms.clearance }): RangeRow => {
    const key = `${piecesKey(load)} in ${clearance.wallsUm} ${clearance.baseUm} ${clearance.topUm}`;
    const holds = fits.get(key) ?? heldBy(load.pieces, insides, clearance, terms.effort);
    fits.set(key, holds);
    const { values, unsent } = valuesOf(load, candidates, holds, terms);
    for (const at of candidates.keys()) {
      if (holds[at] === "not-proven") notProven[at] = (notProven[at] ?? 0) + parcels;
      if (unsent.includes(at)) noPostage[at] = (noPostage[at] ?? 0) + parcels;
    }
    return { parcels, values };
  });
  const table = checkedTable({
    candidates: candidates.map(({ id }) => id),
    rows: mergedRows(rows),
    unpackedValue: terms.unpackedValue,
  });
  return { table, notProven, noPostage };
}

type Values = { readonly values: readonly (number | null)[]; readonly unsent: readonly number[] };

function valuesOf(
  load: PackedLoad,
  candidates: readonly OfferedCarton[],
  holds: readonly Holding[],
  terms: RangeTerms,
): Values {
  const costs = candidates.map((carton, at) =>
    holds[at] === "fits" ? cartonCost(load, carton, terms) : null,
  );
  // A carton too large for every rate would look cheap beside those whose postage is known.
  const isSent = costs.some((cost) => cost !== null && cost.postageValue !== null);
  const unsent = [...costs.keys()].filter((at) => {
    const cost = costs[at] ?? null;
    return isSent && cost !== null && cost.postageValue === null;
  });
  const values = costs.map((cost, at) =>
    cost === null || unsent.includes(at) ? null : Math.round(cost.totalValue),
  );
  return { values, unsent };
}

/** The same for pieces in whatever order, which fit the same cartons. */
function piecesKey({ pieces }: PackedLoad): string {
  return pieces
    .map(({ block, upright }) => [block.lengthUm, block.widthUm, block.heightUm, upright].join())
    .toSorted()
    .join(";");
}
