import { afterAll, describe, expect, it } from "vitest";
import { betteredBy } from "#lib/cushioning/purchase/bettered-by";
import { checkedMix } from "#lib/cushioning/purchase/checked-mix";
import { choiceOfMix } from "#lib/cushioning/purchase/choice-of-mix";
import { mixFaults } from "#lib/cushioning/purchase/mix-faults";
import { solvedMix } from "#lib/cushioning/purchase/solved-mix";
import { endSolver } from "../../../../app/solver/solve-in-worker";
import { exactMeans, plainMix, plainMixOffer, plainMixSupply, plainWay } from "./small-mix";

afterAll(endSolver);

const { question } = checkedMix(
  plainMix({
    supplies: [plainMixSupply("paper", { onHand: 40 }), plainMixSupply("bubble")],
    offers: [plainMixOffer("bubble", { unitsPerPack: 20, steps: [{ fromPacks: 1, priceMinor: 700 }] })],
    types: [
      {
        id: "cup",
        parcels: 10,
        ways: [plainWay("paper", "paper", 4, 640), plainWay("bubble", "bubble", 2, 540)],
      },
    ],
  }),
);

describe("a plan bettered by others", () => {
  it("takes the better one, and holds it against the same bound", async () => {
    // One roll packs all on bubble: 5400 + 700 = 6100, against 6400 on paper.
    const best = await solvedMix(question, exactMeans, []);
    expect(best.costs.totalMinor).toBeCloseTo(6100, 6);
    const split = [{ typeId: "cup", style: "paper", parcels: 10 } as const];
    const dear = { lines: [], split };
    const worse = await solvedMix(
      { ...question, types: question.types.map((type) => ({ ...type, ways: type.ways.slice(0, 1) })) },
      exactMeans,
      [],
    );
    const asIfFound = { ...worse, proof: { ...worse.proof, boundMinor: 6000, proven: false } };
    const others = [
      { choice: dear, from: "heuristic" as const },
      { choice: choiceOfMix(best), from: "solver" as const },
    ];
    const bettered = betteredBy(question, asIfFound, others, 0.02);
    expect(bettered.costs.totalMinor).toBeCloseTo(6100, 6);
    expect(bettered.proof.gap).toBeCloseTo(100 / 6100, 6);
    expect(bettered.proof.proven).toBe(true);
    expect(mixFaults(question, bettered)).toEqual([]);
  });

  it("stays where the others are no better, or break a rule", async () => {
    const poor = { ...question, limits: { cashMinor: 100, litres: null } };
    const plan = await solvedMix(poor, exactMeans, []);
    const rich = await solvedMix(question, exactMeans, []);
    expect(betteredBy(poor, plan, [{ choice: choiceOfMix(rich), from: "solver" }], 0)).toBe(plan);
  });
});
