import { afterAll, describe, expect, it } from "vitest";
import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { choiceOfMix } from "#lib/cushioning/purchase/choice-of-mix";
import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import { greedyMix } from "#lib/cushioning/purchase/greedy-mix";
import { mixFaults } from "#lib/cushioning/purchase/mix-faults";
import { solvedMix } from "#lib/cushioning/purchase/solved-mix";
import type { Solve } from "#lib/optimisation/solve";
import { endSolver, solveInWorker } from "../../../../app/solver/solve-in-worker";
import { exactMeans, plainMix, plainMixOffer, plainMixSupply, plainWay, smallMix } from "./small-mix";

afterAll(endSolver);

const { question } = checkedMix(smallMix(4, 3));
const greedy = costedMix(question, greedyMix(question));

describe("a solved mix", () => {
  it("is the greedy one, and says why, when there is no time", async () => {
    const plan = await solvedMix(question, { ...exactMeans, seconds: 0 }, []);
    expect(plan.costs).toEqual(greedy.costs);
    expect(plan).toMatchObject({ from: "heuristic", why: { kind: "no-time" } });
    expect(plan.proof).toMatchObject({ boundMinor: null, gap: null, proven: false });
  });

  it("is the greedy one, with the solver's words, when the solver fails", async () => {
    const solve: Solve = () => Promise.reject(new Error("out of memory"));
    const plan = await solvedMix(question, { ...exactMeans, solve }, []);
    expect(plan.costs).toEqual(greedy.costs);
    expect(plan).toMatchObject({ from: "heuristic", why: { kind: "failed", message: "out of memory" } });
    expect(plan.proof.proven).toBe(false);
  });

  it("never shows an answer that breaks a rule, nor believes its bound", async () => {
    const solve: Solve = async (text, options) => {
      const answer = await solveInWorker(text, options);
      const values = Object.fromEntries(
        Object.entries(answer.values ?? {}).map(([name, value]) => [name, name.startsWith("n") ? 0 : value]),
      );
      return { ...answer, values };
    };
    // Nothing on hand: with no packs bought, nothing could be packed.
    const empty = plainMix({
      supplies: [plainMixSupply("paper")],
      offers: [plainMixOffer("paper")],
      types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 2, 500)] }],
    });
    const plan = await solvedMix(empty, { ...exactMeans, solve }, []);
    expect(mixFaults(empty, plan)).toEqual([]);
    expect(plan).toMatchObject({ from: "heuristic", why: { kind: "unsound" } });
    expect(plan.proof.boundMinor).toBeNull();
    expect(plan.costs.totalMinor).toBe(2800);
  });

  it("says so when the solver claims that there is none", async () => {
    const solve: Solve = () => Promise.resolve({ kind: "infeasible", values: null, bound: 0, seconds: 0 });
    const plan = await solvedMix(question, { ...exactMeans, solve }, []);
    expect(plan.why).toEqual({ kind: "unsound", faults: [] });
  });

  it("keeps a known plan that is as good, and leaves out one that breaks a rule", async () => {
    const best = await solvedMix(question, exactMeans, []);
    const start = { choice: choiceOfMix(best), from: best.from };
    const solve: Solve = () =>
      Promise.resolve({ kind: "stopped", values: null, bound: Number.NEGATIVE_INFINITY, seconds: 1 });
    const kept = await solvedMix(question, { ...exactMeans, solve }, [start]);
    expect(kept.costs.totalMinor).toBe(best.costs.totalMinor);
    expect(kept).toMatchObject({ from: "solver", why: { kind: "stopped" } });
    const bought = best.orders.some(({ lines }) => lines.length > 0);
    expect(bought).toBe(true);
    const noCash = { ...question, limits: { cashMinor: 0, litres: null } };
    const poor = await solvedMix(noCash, { ...exactMeans, solve }, [start]);
    expect(poor.orders).toEqual([]);
    expect(mixFaults(noCash, poor)).toEqual([]);
  });

  it("leaves undone only what no purchase could avoid, by name", async () => {
    // 10 sheets on hand and one pack of 6 to be had: 16 sheets for parcels of 5, and 3 are to be kept.
    // 3 parcels take 15; the 1 left lacks 2 of 3. Packing comes first: 16 / 5 = 3.2 parcels, none kept.
    const short = plainMix({
      supplies: [plainMixSupply("paper", { onHand: 10, keep: 3 })],
      offers: [plainMixOffer("paper", { unitsPerPack: 6, mostPacks: 1 })],
      types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 5, 500)] }],
    });
    const plan = await solvedMix(short, exactMeans, []);
    expect(plan.unpacked).toEqual([{ typeId: "cup", parcels: expect.closeTo(0.8, 6) }]);
    expect(plan.shortfalls).toEqual([{ supplyId: "paper", units: expect.closeTo(3, 5) }]);
    expect(plan.proof).toMatchObject({ leastUndone: true, proven: true });
  });

  it("measures its gap against what is spent, not against the total", async () => {
    const rich = plainMix({
      supplies: [plainMixSupply("paper", { onHand: 1000, leftMinor: 2 })],
      offers: [],
      types: [{ id: "cup", parcels: 4, ways: [plainWay("paper", "paper", 5, 490)] }],
    });
    // 1960 postage, 980 sheets left at 2 each: 1960. The total is nothing.
    const plan = await solvedMix(rich, exactMeans, []);
    expect(plan.costs.totalMinor).toBeCloseTo(0, 6);
    expect(plan.proof.gap).toBeLessThan(1e-9);
    expect(plan.proof.proven).toBe(true);
  });
});
