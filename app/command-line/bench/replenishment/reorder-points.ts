import { safetyStock, serviceFactor } from "#lib/replenishment/safety-stock";
import { type Measurement, measurement } from "../../measurement";
import { chances } from "../forecast/chances";
import { cycleService } from "./cycle-service";
import { DEMANDS, FINE_DEMANDS, type KnownDemand, knownPoint, LEAD_TIMES, LEVELS } from "./known-demand";

const CYCLES = 200_000;
const SEED = 20_261_125;
const PER_CENT = 100;
const AREA = "replenishment";

/** The share of order cycles without a shortage that reorder points give, played many times, and the textbook's. */
export function reorderPoints(): Measurement[] {
  return [
    ...DEMANDS.flatMap((demand) => LEVELS.flatMap((level) => exact(demand, level))),
    ...FINE_DEMANDS.flatMap((demand) => LEVELS.map((level) => near(demand, level))),
  ];
}

function played(demand: KnownDemand, point: number): number {
  return PER_CENT * cycleService(demand, point, { cycles: CYCLES, chance: chances(SEED) });
}

function exact(demand: KnownDemand, level: number): Measurement[] {
  const { amount } = knownPoint(demand, level);
  const goal = PER_CENT * level;
  const of = (name: string, value: number, target: number | null) =>
    measurement({
      area: AREA,
      name: `${demand.name} use, goal ${goal} %: ${name}`,
      value,
      unit: "points",
      target,
    });
  const book = textbookPoint(demand, level);
  return [
    of(`reorder point ${amount} falls short of the goal by`, goal - played(demand, amount), 0.5),
    of(`one unit less, ${amount - 1}, stands above the goal by`, played(demand, amount - 1) - goal, 0),
    of(`the textbook's ${book} falls short by`, goal - played(demand, book), null),
  ];
}

function near(demand: KnownDemand, level: number): Measurement {
  const { amount } = knownPoint(demand, level);
  const goal = PER_CENT * level;
  return measurement({
    area: AREA,
    name: `${demand.name}, goal ${goal} %: reorder point ${amount} is off by`,
    value: Math.abs(played(demand, amount) - goal),
    unit: "points",
    target: 1.5,
  });
}

/** Mean and normal safety stock over the lead time, as it varies; nothing for what is used before a check. */
function textbookPoint({ mean, k }: KnownDemand, level: number): number {
  const weeks = LEAD_TIMES.reduce((sum, each) => sum + each.chance * each.weeks, 0);
  const spread = LEAD_TIMES.reduce((sum, each) => sum + each.chance * (each.weeks - weeks) ** 2, 0);
  const deviation = Math.sqrt(weeks * (mean + k * mean ** 2) + mean ** 2 * spread);
  return Math.ceil(mean * weeks + safetyStock(serviceFactor(level), deviation));
}
