import { describe, expect, it } from "vitest";
import { sumGrid } from "#lib/forecast/sum-grid";
import {
  DEMANDS,
  type KnownDemand,
  knownSpread,
} from "../../../../app/command-line/bench/replenishment/known-demand";

// Syntetos, Boylan and Croston (2005), On the categorization of demand patterns (from memory).
const LONG_INTERVAL = 1.32;
const UNEVEN_SIZES = 0.49;

/** Mean weeks from one use to the next, and the squared variation of what is used then. */
function pattern(demand: KnownDemand): { interval: number; variation: number } {
  const { chances } = sumGrid(knownSpread(demand), { mean: demand.mean, weeks: 1 }, 1);
  const used = 1 - (chances[0] ?? 0);
  const mean = chances.reduce((sum, chance, count) => sum + chance * count, 0) / used;
  const square = chances.reduce((sum, chance, count) => sum + chance * count * count, 0) / used;
  return { interval: 1 / used, variation: square / (mean * mean) - 1 };
}

describe("the uses that reorder points are measured with", () => {
  it.each([
    ["smooth", false, false],
    ["erratic", false, true],
    ["intermittent", true, false],
    ["lumpy", true, true],
  ])("%s is rare %s and uneven %s", (name, isRare, isUneven) => {
    const demand = DEMANDS.find((each) => each.name === name);
    if (demand === undefined) throw new RangeError(`there is no ${name} use`);
    const { interval, variation } = pattern(demand);
    expect(interval > LONG_INTERVAL).toBe(isRare);
    expect(variation > UNEVEN_SIZES).toBe(isUneven);
  });
});
