import { readFileSync } from "node:fs";
import { sumGrid } from "#lib/forecast/sum-grid";
import { orderUpToLevels } from "#lib/replenishment/exact-policy/order-up-to-levels";
import { type Measurement, measurement } from "../../measurement";
import { DATA } from "../forecast/giftware-ledger";

type Case = {
  readonly topic: string;
  readonly input: {
    readonly K: number;
    readonly h: number;
    readonly p: number;
    readonly mean: number;
    readonly leadTime: number;
  };
  readonly expected: { readonly s: number; readonly S: number; readonly cost: number };
};

const POISSON = { perUse: 1, dispersions: [0], whole: true };

/** Exact levels of the published Poisson cases: how far the cost is off, and how many levels differ. */
export function exactLevels(): Measurement[] {
  const file: { readonly cases: readonly Case[] } = JSON.parse(
    readFileSync(`${DATA}inventory-cases.json`, "utf8"),
  );
  const cases = file.cases.filter(({ topic }) => topic === "s-S-optimal-poisson");
  const found = cases.map(({ input, expected }) => ({
    expected,
    levels: orderUpToLevels({
      orderCost: input.K,
      holdingCost: input.h,
      shortageCost: input.p,
      leadTimePeriods: input.leadTime,
      use: sumGrid(POISSON, { mean: input.mean, weeks: 1 }, 1),
    }),
  }));
  const off = found.map(({ expected, levels }) => Math.abs(levels.cost - expected.cost));
  const differing = found.filter(
    ({ expected, levels }) => levels.reorderPoint !== expected.s || levels.orderUpTo !== expected.S,
  );
  const of = (name: string, value: number, target: number) =>
    measurement({
      area: "replenishment",
      name: `(s, S) of ${cases.length} published cases: ${name}`,
      value,
      unit: "",
      target,
    });
  return [of("cost off by at most", Math.max(...off), 0.0005), of("levels that differ", differing.length, 0)];
}
