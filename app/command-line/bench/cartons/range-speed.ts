import { costTable } from "#lib/cartons/range/cost-table";
import type { CurvePoint } from "#lib/cartons/range/range-curve";
import type { CartonRange } from "#lib/cartons/range/range-of";
import { rangeSteps } from "#lib/cartons/range/range-steps";
import { curveInProcess, rangeInProcess } from "../../../solver/range-in-process";
import { endSolver, solveInWorker } from "../../../solver/solve-in-worker";
import { type Measurement, measurement } from "../../measurement";
import { parcelsOf, rangeComparison } from "./range-comparison";
import { giftwareLoads, RANGE_CANDIDATES, RANGE_TERMS, TODAYS_LADDER } from "./range-giftware";

const SEEDS = [1, 2, 3];
const PARCELS = 10_000;
const MOST = 10;
const SECONDS = 60;

/**
 * Which cartons to keep: how long a year of parcels takes, whether the best range is proven, and how much less it costs
 * than cubes for parcels whose sizes, masses, prices and rates are invented by three seeds.
 */
export async function rangeSpeed(): Promise<Measurement[]> {
  const speed = await largeTable();
  const compared: Measurement[] = [];
  for (const seed of SEEDS) compared.push(...(await comparedRows(seed)));
  await endSolver();
  return [...speed, ...compared];
}

async function largeTable(): Promise<Measurement[]> {
  const loads = giftwareLoads(1, PARCELS);
  const [built, tableSeconds] = await timed(() => costTable(loads, RANGE_CANDIDATES, RANGE_TERMS));
  const { table, notProven } = built;
  const sizes = TODAYS_LADDER.length;
  const question = { table, seconds: SECONDS };
  const [range, rangeSeconds] = await timed(() => rangeInProcess({ ...question, most: sizes }).answer);
  const [curve, curveSeconds] = await timed(
    () => curveInProcess({ ...question, most: MOST }, () => undefined).answer,
  );
  const name = `${RANGE_CANDIDATES.length} candidates, ${parcelsOf(table)} parcels`;
  return [
    counted(`${name}: rows after merging`, table.rows.length, "rows", null),
    counted(
      `${name}: parcels whose fit is not proven, worst candidate`,
      Math.max(...notProven),
      "parcels",
      null,
    ),
    counted(`${name}: seconds for the table`, tableSeconds, "s", null),
    counted(`${name}: seconds for ${sizes} sizes in a process of its own`, rangeSeconds, "s", 10),
    counted(`${name}: gap of ${sizes} sizes`, 100 * range.proof.gap, "%", 0),
    counted(`${name}: seconds for 1 to ${MOST} sizes`, curveSeconds, "s", null),
    counted(`${name}: ranges of 1 to ${MOST} not proven`, unproven(curve), "ranges", 0),
    counted(`${name}: ranges for which the solver was asked`, asked(curve), "ranges", null),
    counted(`${name}: numbers of sizes at which cost rises`, rises(curve), "ranges", 0),
  ];
}

async function comparedRows(seed: number): Promise<Measurement[]> {
  const means = { solve: solveInWorker, seconds: SECONDS, now: () => performance.now() / 1_000 };
  const { best, bestCubes, todayValue, table, parcels, allParcels } = await rangeComparison(
    seed,
    null,
    means,
  );
  const { steps } = rangeSteps(table, TODAYS_LADDER, best.chosen, []);
  const dearer = steps.filter(({ change }) => change > 0).length;
  const name = `giftware with invented sizes, seed ${seed}`;
  const less = (than: number): number => 100 * (best.value / than - 1);
  return [
    counted(`${name}: parcels compared of ${allParcels}`, parcels, "parcels", null),
    counted(`${name}: best six against the best six cubes`, less(bestCubes.value), "%", 0),
    counted(`${name}: best six against today's even cubes`, less(todayValue), "%", 0),
    counted(
      `${name}: steps from today's to it that make parcels dearer, of ${steps.length}`,
      dearer,
      "steps",
      null,
    ),
    counted(`${name}: ranges not proven`, unproven([best, bestCubes]), "ranges", 0),
  ];
}

const unproven = (ranges: readonly CartonRange[]): number =>
  ranges.filter(({ proof }) => !proof.proven).length;
const asked = (ranges: readonly CartonRange[]): number =>
  ranges.filter(({ proof }) => proof.solver.kind !== "not-needed").length;
const rises = (curve: readonly CurvePoint[]): number =>
  curve.filter(({ value }, at) => value > (curve[at - 1]?.value ?? Number.POSITIVE_INFINITY)).length;

async function timed<T>(work: () => Promise<T> | T): Promise<[T, number]> {
  const begun = performance.now();
  const done = await work();
  return [done, (performance.now() - begun) / 1_000];
}

const counted = (name: string, value: number, unit: string, target: number | null): Measurement =>
  measurement({ area: "cartons", name, value, unit, target });
