import { costTable } from "#lib/cartons/range/cost-table";
import { rangeCost } from "#lib/cartons/range/range-cost";
import { rangeCurve } from "#lib/cartons/range/range-curve";
import { rangeSteps } from "#lib/cartons/range/range-steps";
import { sizeEarns } from "#lib/cartons/range/size-earns";
import { expectedMinor } from "../cartons/expected-minor";
import { dearestAsUnpacked } from "../cartons/range/dearest-as-unpacked";
import type { ShopRangeTask, ShopRangeTold } from "../cartons/range/shop-range";
import { solveInWorker } from "./solve-in-worker";

/**
 * The carton ranges of a shop in a process of their own: what each past parcel costs in each size, then the ranges of one,
 * two … sizes. It tells of each on the way, and ends.
 */
process.once("disconnect", () => process.exit(1));
process.once("message", (task: ShopRangeTask) => {
  void answered(task);
});

async function answered(task: ShopRangeTask): Promise<void> {
  const { loads, offered, terms, postage, today, onHand, most, seconds, shipDay } = task;
  const { table, notProven } = dearestAsUnpacked((unpackedValue) =>
    costTable(loads, offered, {
      ...terms,
      unpackedValue,
      postage: (massMg, size) => expectedMinor(massMg, size, postage, shipDay),
    }),
  );
  tell({ kind: "today", today: rangeCost(table, today), notProven });
  const means = { solve: solveInWorker, seconds, now: () => performance.now() / 1_000 };
  await rangeCurve(table, most, means, (point) =>
    tell({
      kind: "range",
      point,
      earns: sizeEarns(table, point.chosen),
      steps: rangeSteps(table, today, point.chosen, onHand),
    }),
  );
  process.send?.({ answer: most }, () => process.exit(0));
}

function tell(told: ShopRangeTold): void {
  process.send?.({ told });
}
