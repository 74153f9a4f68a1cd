import { afterAll, afterEach, describe, expect, it, vi } from "vitest";
import { endSolver, solveInWorker } from "../../../app/solver/solve-in-worker";

const options = { seconds: 10, gap: 0 };
const text = (rows: string) =>
  `Minimize\n cost: 3 x + 2 y\nSubject To\n${rows}\nBounds\n 0 <= x <= 9\n 0 <= y <= 9\nGenerals\n x\n y\nEnd\n`;

afterEach(() => {
  vi.restoreAllMocks();
});
afterAll(endSolver);

/** A model that takes far longer than a second: 60 knapsacks of 50 things that hang together. */
function longModel(): string {
  const names = Array.from({ length: 50 }, (_, index) => `x${index}`);
  const weight = (row: number, column: number) => 50 + ((row * 7919 + column * 104_729) % 97);
  const objective = names.map((name, column) => `- ${weight(0, column)} ${name}`).join("\n ");
  const rows = Array.from(
    { length: 60 },
    (_, row) =>
      ` r${row}: ${names.map((name, column) => `+ ${weight(row + 1, column)} ${name}`).join("\n ")} <= 2000`,
  );
  return `Minimize\n cost: ${objective}\nSubject To\n${rows.join("\n")}\nBinaries\n ${names.join("\n ")}\nEnd\n`;
}

describe("the solver in its thread", () => {
  it("finds the best whole values and their proof", async () => {
    // 2x + y >= 7: x = 3, y = 1 costs 11, as does no cheaper pair (x = 4: 12, x = 2: 12).
    const answer = await solveInWorker(text(" need: 2 x + y >= 7"), options);
    expect(answer).toMatchObject({ kind: "optimal", values: { x: 3, y: 1 }, bound: 11 });
  });

  it("says when nothing meets the rows", async () => {
    const answer = await solveInWorker(text(" need: x + y >= 19"), options);
    expect(answer).toMatchObject({ kind: "infeasible", values: null });
  });

  it("begins with a known answer, and stops in time", async () => {
    const start = Object.fromEntries(
      Array.from({ length: 50 }, (_, index) => [`x${index}`, index < 10 ? 1 : 0]),
    );
    const answer = await solveInWorker(longModel(), { seconds: 0.02, gap: 0, start });
    expect(answer.kind).toBe("stopped");
    expect(answer.values).not.toBeNull();
    const cost = Object.entries(answer.values ?? {}).reduce(
      (sum, [name, value]) => sum - value * (50 + ((Number(name.slice(1)) * 104_729) % 97)),
      0,
    );
    expect(answer.bound).toBeLessThanOrEqual(cost + 1e-6);
  });

  it("leaves the main thread free", async () => {
    let isFree = false;
    setImmediate(() => {
      isFree = true;
    });
    await solveInWorker(text(" need: 2 x + y >= 7"), options);
    expect(isFree).toBe(true);
  });

  it("refuses a text that is no model, and goes on with the next", async () => {
    await expect(solveInWorker("Nonsense", options)).rejects.toThrow(/The solver failed/);
    expect((await solveInWorker(text(" need: x >= 1"), options)).kind).toBe("optimal");
  });

  it("answers calls in their order, and starts again after it ended", async () => {
    const answers = await Promise.all(
      [1, 2, 3].map((need) => solveInWorker(text(` need: x >= ${need}`), options)),
    );
    expect(answers.map(({ values }) => values?.["x"])).toEqual([1, 2, 3]);
    await endSolver();
    expect((await solveInWorker(text(" need: x >= 4"), options)).values?.["x"]).toBe(4);
  });

  it("says where it looked when it cannot start", async () => {
    await endSolver();
    vi.spyOn(process, "cwd").mockReturnValue("/nowhere");
    await expect(solveInWorker(text(" need: x >= 1"), options)).rejects.toThrow(
      /could not be started from .nowhere.app.solver.highs-worker.mjs/,
    );
    vi.restoreAllMocks();
    expect((await solveInWorker(text(" need: x >= 1"), options)).kind).toBe("optimal");
  });
});
