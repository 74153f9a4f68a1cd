import type { WayCost } from "#lib/cushioning/way-cost";
import { packedWeightQuantile } from "#lib/packing/weight/packed-weight";
import { formatMass, milligrams } from "#lib/units/mass";
import { formatVolume } from "#lib/units/volume";
import { finePrice } from "../fine-price";
import { type MoneyAndMass, minorText } from "../why-words";

/** One row of the side by side: what it is, and what it is in each way. */
export type CostRow = {
  readonly name: string;
  readonly cells: readonly string[];
  /** a sum of the rows above it */
  readonly isSum?: boolean;
};

const NINE_IN_TEN = 0.9;
const ML_PER_LITRE = 1_000;

/**
 * The ways of one kind of parcel side by side, part by part.
 *
 * @param costs of its ways, in the order of the columns
 * @param names of cartons and zones by id
 * @param shop how it writes money and weights
 * @returns rows; what nobody counts has none
 */
export function costRows(
  costs: readonly WayCost[],
  names: ReadonlyMap<string, string>,
  shop: MoneyAndMass,
): CostRow[] {
  const row = (name: string, cell: (cost: WayCost) => string | null, isSum = false): CostRow[] => {
    const cells = costs.map(cell);
    return cells.every((text) => text === null)
      ? []
      : [{ name, cells: cells.map((text) => text ?? "not known"), ...(isSum ? { isSum } : {}) }];
  };
  const money = (minor: number | null) => (minor === null ? null : minorText(minor, shop));
  const mass = (mg: number) => formatMass(milligrams(Math.round(mg)), shop.measures);
  const zones = [...new Set(costs.flatMap(({ postage }) => postage?.zones.map(({ zone }) => zone) ?? []))];
  return [
    ...row("Carton", ({ way }) => way.cartons.map((id) => names.get(id) ?? id).join(" in ") || "none named"),
    ...row("Packing by the card weighs", ({ way }) => mass(way.packingMg)),
    ...row("The parcel weighs, likely", ({ way }) =>
      way.weight === null ? null : mass(way.weight.likelyMg),
    ),
    ...row("9 in 10 stay under", ({ way }) =>
      way.weight === null ? null : mass(packedWeightQuantile(way.weight, NINE_IN_TEN)),
    ),
    ...row("Materials, at their cost in the books", ({ bookMinor }) => money(bookMinor)),
    ...row("Materials, bought again", ({ materialsMinor }) => money(materialsMinor)),
    ...row("Postage, expected", ({ postageMinor }) => money(postageMinor)),
    ...(zones.length < 2
      ? []
      : zones.flatMap((zone) =>
          row(`   to ${names.get(zone) ?? zone}`, ({ postage }) =>
            money(postage?.zones.find((each) => each.zone === zone)?.minor ?? null),
          ),
        )),
    ...row("Your time", ({ minutesMinor }) => money(minutesMinor)),
    ...row("What breaks, expected", ({ breakageMinor }) => money(breakageMinor)),
    ...row("All together, bought again", ({ totalMinor }) => money(totalMinor), true),
    ...row("Room on the shelf, as far as it is written down", ({ litres }) =>
      litres === null ? null : roomText(litres, shop),
    ),
    ...row("Paper and board, of the packing’s weight", ({ paperShare }) =>
      paperShare === null ? null : `${Math.round(paperShare * 100)} %`,
    ),
  ];
}

/**
 * What each way takes of each supply and what that costs, so that the materials can be added up by hand.
 *
 * @param costs of the ways, in the order of the columns
 * @param prices 1/10,000 minor unit a use unit
 * @param supplyOf name and amount in words
 * @param shop how it writes money
 * @returns supplies that differ first
 */
export function billRows(
  costs: readonly WayCost[],
  prices: ReadonlyMap<string, number | null>,
  supplyOf: (id: string) => { readonly name: string; readonly amount: (units: number) => string },
  shop: MoneyAndMass,
): CostRow[] {
  const ids = [...new Set(costs.flatMap(({ way }) => [...way.takes.keys()]))];
  const unitsOf = (cost: WayCost, id: string) => cost.way.takes.get(id) ?? 0;
  const differs = (id: string) => new Set(costs.map((cost) => unitsOf(cost, id))).size > 1;
  return ids
    .toSorted((a, b) => Number(differs(b)) - Number(differs(a)))
    .map((id) => {
      const { name, amount } = supplyOf(id);
      const price = prices.get(id) ?? null;
      return {
        name: price === null ? `${name}, no price` : `${name}, ${finePrice(price, shop)}`,
        cells: costs.map((cost) => {
          const units = unitsOf(cost, id);
          if (units === 0) return "none";
          return price === null ? amount(units) : `${amount(units)} = ${finePrice(units * price, shop)}`;
        }),
      };
    });
}

function roomText(litres: number, { measures }: MoneyAndMass): string {
  return formatVolume(Math.round(litres * ML_PER_LITRE), measures);
}
