import { parentPort } from "node:worker_threads";
import loadHighs from "highs";

// One model at a time: a message in, an answer out. A failure is an answer too, so that the thread lives on.
if (parentPort === null) throw new Error("highs-worker runs as a worker thread only");
const port = parentPort;
const highs = await loadHighs();
const { modelStatus } = highs.constants;

/** The number by which HiGHS says that a solution meets all rows. */
const FEASIBLE = 2;

/**
 * @param {{ modelText: string, seconds: number, gap: number, wholeWithin?: number, start?: Record<string, number> }} task
 */
function answer({ modelText, seconds, gap, wholeWithin, start }) {
  return highs.withModel({ format: "lp", data: modelText }, (model) => {
    model.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: gap });
    if (wholeWithin !== undefined) model.options.set({ mip_feasibility_tolerance: wholeWithin });
    const names = Array.from({ length: model.getDimensions().numCols }, (_, index) =>
      model.getColName(index),
    );
    if (start !== undefined) model.setSolution({ colValue: names.map((name) => start[name] ?? 0) });
    model.run();
    const kind = kindOf(model.getModelStatus());
    const isFound = model.info.get("primal_solution_status") === FEASIBLE;
    const found = isFound ? model.getSolution().colValue : [];
    const values = isFound ? Object.fromEntries(names.map((name, index) => [name, found[index]])) : null;
    const isWhole = /^Generals$/m.test(modelText);
    const proven = kind === "optimal" ? model.getObjectiveValue() : Number.NEGATIVE_INFINITY;
    const bound = isWhole ? Number(model.info.get("mip_dual_bound")) : proven;
    return { kind, values, bound, seconds: model.getRunTime() };
  });
}

/** @param {number} status */
function kindOf(status) {
  if (status === modelStatus.optimal) return "optimal";
  if (status === modelStatus.infeasible || status === modelStatus.unboundedOrInfeasible) return "infeasible";
  if (status === modelStatus.unbounded) return "unbounded";
  const stops = [modelStatus.timeLimit, modelStatus.iterationLimit, modelStatus.solutionLimit];
  if (stops.some((stop) => stop === status) || status === modelStatus.interrupted) return "stopped";
  throw new Error(`the solver ended with status ${status}`);
}

port.on("message", (task) => {
  try {
    port.postMessage({ answer: answer(task) });
  } catch (error) {
    port.postMessage({ error: error instanceof Error ? error.message : String(error) });
  }
});
port.postMessage({ ready: true });
