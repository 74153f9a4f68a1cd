import { chosenForecast } from "#lib/forecast/chosen-forecast";
import { type Measurement, measurement } from "../../measurement";
import { chances } from "./chances";

const SERIES = 1_000;
const WEEKS = 156;
const STEPS = 3;
const TARGET_SECONDS = 30;
const MS_PER_SECOND = 1_000;
const MICROS_PER_SECOND = 1_000_000;

/**
 * Time to try every method on weekly series of three years and to choose, on one core. Each method looks back
 * over the last 28 weeks with the parameters fitted to all.
 */
export function forecastSpeed(): Measurement[] {
  const series = Array.from({ length: SERIES }, (_, index) => generatedWeeks(index));
  const began = performance.now();
  const before = process.cpuUsage();
  for (const values of series) chosenForecast({ values, seasonLength: 1 }, STEPS);
  const used = process.cpuUsage(before);
  const area = "forecast";
  return [
    measurement({
      area,
      name: "1,000 series of 156 weeks, every method, chosen (processor time)",
      value: (used.user + used.system) / MICROS_PER_SECOND,
      unit: "s",
      target: TARGET_SECONDS,
    }),
    measurement({
      area,
      name: "1,000 series of 156 weeks, every method, chosen (by the clock)",
      value: (performance.now() - began) / MS_PER_SECOND,
      unit: "s",
      target: null,
    }),
  ];
}

/** A level that wanders, a season of a year, counts around them: the same in every run. */
function generatedWeeks(seed: number): number[] {
  const chance = chances(seed);
  let level = 5 + 40 * chance();
  return Array.from({ length: WEEKS }, (_, week) => {
    level *= 1 + (chance() - 0.5) / 10;
    const season = 1 + 0.3 * Math.sin((2 * Math.PI * week) / 52);
    return Math.round(level * season * (0.6 + 0.8 * chance()));
  });
}
