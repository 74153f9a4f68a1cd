import { describe, expect, it } from "vitest";
import type { SolverAnswer } from "#lib/optimisation/solve";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import { planModel } from "#lib/purchasing/plan/plan-model";
import type { Found } from "#lib/purchasing/plan/plan-search";
import { planStart } from "#lib/purchasing/plan/plan-start";
import { solvedPlan } from "#lib/purchasing/plan/solved-plan";
import { plainOffer, plainQuestion, plainSupplier, plainSupply } from "./small-question";

const question = plainQuestion({
  supplies: [plainSupply("paper", [1, 1], { shortMinor: 500, holdingMinor: 10 })],
  suppliers: [plainSupplier("north", 2, { handlingMinor: 30 })],
  offers: [plainOffer("paper", "north")],
});
/** One order each week costs 260, one for both weeks 240. */
const line = (week: number, packs: number) => ({ offerId: "paper of north", week, packs });
const dear = { lines: [line(0, 1), line(1, 1)], standIns: [] };
const cheap = { lines: [line(0, 2)], standIns: [] };
const first: Found = {
  choice: dear,
  plan: costedPlan(question, dear),
  from: "heuristic",
  why: null,
  bound: 200,
  isMet: true,
};

function solved(answer: Omit<SolverAnswer, "seconds"> | Error, goal = { kind: "cost" } as const) {
  const solve = () =>
    answer instanceof Error ? Promise.reject(answer) : Promise.resolve({ ...answer, seconds: 0 });
  return solvedPlan(question, goal, { solve, seconds: 1, gap: 0, now: () => 0 }, 1, first);
}

const values = planStart(planModel(question), cheap);

describe("a plan that the solver went on from", () => {
  it("is the solver's where that is cheaper, with the better of both bounds", async () => {
    const found = await solved({ kind: "stopped", values, bound: 220 });
    expect(found).toMatchObject({ from: "solver", why: null, bound: 220, choice: cheap, isMet: true });
    expect(found.plan?.costs.totalMinor).toBe(240);
    expect(await solved({ kind: "stopped", values, bound: 150 })).toMatchObject({ bound: 200 });
  });

  it("stays where the solver stops, fails, or breaks a rule; then its bound does not count", async () => {
    expect(await solved({ kind: "stopped", values: null, bound: 210 })).toMatchObject({
      choice: dear,
      why: { kind: "stopped" },
      bound: 210,
    });
    expect(await solved(new Error("no thread"))).toMatchObject({
      choice: dear,
      why: { kind: "failed", message: "no thread" },
      bound: 200,
    });
    const tight = { ...question, offers: question.offers.map((offer) => ({ ...offer, mostPacks: 1 })) };
    const solve = () => Promise.resolve({ kind: "optimal", values, bound: 230, seconds: 0 } as const);
    const broken = await solvedPlan(
      tight,
      { kind: "cost" },
      { solve, seconds: 1, gap: 0, now: () => 0 },
      1,
      first,
    );
    expect(broken).toMatchObject({ choice: dear, why: { kind: "unsound" }, bound: 200 });
  });
});
