import type { RangeTable } from "#lib/cartons/range/range-table";
import { evenRandom } from "#lib/statistics/even-random";

/** A table with invented costs of a seed: up to 8 candidates and 12 rows, some cells empty. */
export function smallTable(seed: number): RangeTable {
  const random = evenRandom(seed);
  const whole = (from: number, to: number) => from + Math.floor(random() * (to - from + 1));
  const candidates = Array.from({ length: whole(1, 8) }, (_, at) => `c${at}`);
  const rows = Array.from({ length: whole(1, 12) }, () => ({
    parcels: whole(1, 9),
    values: candidates.map(() => (random() < 0.35 ? null : whole(0, 40))),
  }));
  return { candidates, rows, unpackedValue: whole(40, 90) };
}

/** Every choice of up to so many sizes. */
export function everyChoice(sizes: number, most: number): number[][] {
  return Array.from({ length: 2 ** sizes }, (_, bits) =>
    Array.from({ length: sizes }, (__, size) => size).filter(
      (size) => Math.floor(bits / 2 ** size) % 2 === 1,
    ),
  ).filter((chosen) => chosen.length <= most);
}

/** The cost of a choice, each parcel by itself. */
export function plainCost({ rows, unpackedValue }: RangeTable, chosen: readonly number[]): number {
  return rows.reduce((sum, { parcels, values }) => {
    const held = chosen.map((size) => values[size] ?? null).filter((value) => value !== null);
    return sum + parcels * (held.length === 0 ? unpackedValue : Math.min(...held));
  }, 0);
}

/** The least cost of all choices of up to so many sizes, tried one by one. */
export function cheapestOf(table: RangeTable, most: number): number {
  return Math.min(...everyChoice(table.candidates.length, most).map((chosen) => plainCost(table, chosen)));
}
