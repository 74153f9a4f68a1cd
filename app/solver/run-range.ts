import { type CurvePoint, rangeCurve } from "#lib/cartons/range/range-curve";
import { type CartonRange, rangeOf } from "#lib/cartons/range/range-of";
import type { RangeTask } from "./range-in-process";
import { solveInWorker } from "./solve-in-worker";
import type { ProcessMessage } from "./work-in-process";

/**
 * The carton range's own process, so that the server stays free to answer: it gets one task through its channel, tells of
 * each range on the way, sends the answer back and ends.
 */
process.once("disconnect", () => process.exit(1));
process.once("message", (task: RangeTask) => {
  void answered(task);
});

async function answered({ kind, table, most, seconds }: RangeTask): Promise<void> {
  const means = { solve: solveInWorker, seconds, now: () => performance.now() / 1_000 };
  if (kind === "range") return finish(await rangeOf(table, most, means));
  finish(
    await rangeCurve(table, most, means, (told) => {
      const message: RangeMessage = { told };
      process.send?.(message);
    }),
  );
}

type Answer = CartonRange | CurvePoint[];
type RangeMessage = ProcessMessage<Answer, CurvePoint>;

function finish(answer: Answer): void {
  const message: RangeMessage = { answer };
  process.send?.(message, () => process.exit(0));
}
