import { describe, expect, it } from "vitest";
import { recipeEvidence } from "#lib/packing/learning/recipe-evidence";
import {
  countsStillNeeded,
  type ProposalAnswer,
  recipeProposals,
  saidNo,
  worthwhileChange,
} from "#lib/packing/learning/recipe-proposals";
import { amountOfUnits, unitsOf } from "#lib/units/amount";
import { addDays } from "#lib/units/day";
import { FIRST_DAY, trueShelf, type Uses } from "./shelf";

const times = [6, 2, 9, 1, 7, 3, 8, 4, 5, 6, 9, 3, 7, 5, 2, 8];
const stepKey = "mug/fill";
const holding = new Set([stepKey, "mug/wrap"]);

function proposed(
  of: { units: number; factor: number; counts: number },
  answers: readonly ProposalAnswer[] = [],
) {
  const weeks: readonly Uses[] = times
    .slice(0, of.counts)
    .map((many) => ({ [stepKey]: { times: many, units: of.units } }));
  const intervals = trueShelf(weeks, { [stepKey]: of.factor });
  const countDays = intervals.map(({ to }) => to);
  const evidence = recipeEvidence(intervals, countDays.at(-1) ?? FIRST_DAY, {
    holding,
    noes: saidNo(answers),
  });
  return recipeProposals(evidence, {
    unit: "sheet",
    cards: [{ stepKey, says: amountOfUnits(of.units) }],
    answers,
    countDays,
  });
}

describe("recipe proposals", () => {
  it("say that a mug pair takes about 13 sheets where the card says 11", () => {
    const [proposal, ...others] = proposed({ units: 11, factor: 13 / 11, counts: 12 });
    expect(others).toEqual([]);
    expect(proposal?.stepKeys).toEqual([stepKey]);
    expect(unitsOf(proposal?.says ?? amountOfUnits(0))).toBe(11);
    expect(unitsOf(proposal?.usesAbout ?? amountOfUnits(0))).toBe(13);
    expect(proposal?.counts).toBe(12);
    expect(proposal?.low).toBeGreaterThan(11);
  });

  it("also say that a card takes too much", () => {
    expect(unitsOf(proposed({ units: 10, factor: 0.8, counts: 16 })[0]?.usesAbout ?? amountOfUnits(0))).toBe(
      8,
    );
  });

  it("are not made where the card is right, where it hardly matters, or after three counts", () => {
    expect(proposed({ units: 11, factor: 1, counts: 16 })).toEqual([]);
    expect(proposed({ units: 11, factor: 1.06, counts: 16 })).toEqual([]);
    expect(proposed({ units: 0.5, factor: 1.3, counts: 16 })).toEqual([]);
    expect(proposed({ units: 11, factor: 1.5, counts: 3 })).toEqual([]);
  });

  it("wait for four more counts after a no, for one after later", () => {
    const of = { units: 11, factor: 1.3 };
    const answered = (answer: "no" | "later"): ProposalAnswer[] => [
      { stepKeys: [stepKey], answer, on: addDays(FIRST_DAY, 7 * 10) },
    ];
    expect(proposed({ ...of, counts: 10 })).toHaveLength(1);
    expect(proposed({ ...of, counts: 10 }, answered("later"))).toEqual([]);
    expect(proposed({ ...of, counts: 11 }, answered("later"))).toHaveLength(1);
    expect(proposed({ ...of, counts: 13 }, answered("no"))).toEqual([]);
    expect(proposed({ ...of, counts: 14 }, answered("no"))).toHaveLength(1);
  });

  it("say how many counts they still wait for: counts of the day of the answer are not further ones", () => {
    const days = [0, 7, 14].map((after) => addDays(FIRST_DAY, after));
    const left = (answer: ProposalAnswer["answer"]) => countsStillNeeded({ answer, on: FIRST_DAY }, days);
    expect(left("no")).toBe(2);
    expect(left("later")).toBe(0);
    expect(countsStillNeeded({ answer: "later", on: addDays(FIRST_DAY, 14) }, days)).toBe(1);
  });

  it("need more counts to outweigh a no", () => {
    const no: ProposalAnswer = { stepKeys: [stepKey], answer: "no", on: FIRST_DAY };
    const odds = (answers: readonly ProposalAnswer[]) =>
      proposed({ units: 11, factor: 1.3, counts: 16 }, answers)[0]?.odds ?? 0;
    expect(odds([no])).toBeLessThan(odds([]));
    expect(proposed({ units: 11, factor: 13 / 11, counts: 12 }, [no, no, no, no])).toEqual([]);
  });

  it("leave a card alone that no longer holds", () => {
    const weeks = times.map((many) => ({ [stepKey]: { times: many, units: 11 } }));
    const evidence = recipeEvidence(trueShelf(weeks, { [stepKey]: 1.3 }), addDays(FIRST_DAY, 112), {
      holding,
      noes: new Map(),
    });
    expect(recipeProposals(evidence, { unit: "sheet", cards: [], answers: [], countDays: [] })).toEqual([]);
  });

  it("offer steps that always go together as one", () => {
    const weeks = times.map((many) => ({
      "mug/wrap": { times: many, units: 2 },
      "mug/fill": { times: many, units: 9 },
    }));
    const intervals = trueShelf(weeks, { "mug/wrap": 13 / 11, "mug/fill": 13 / 11 });
    const evidence = recipeEvidence(intervals, addDays(FIRST_DAY, 112), { holding, noes: new Map() });
    const cards = [
      { stepKey: "mug/wrap", says: amountOfUnits(2) },
      { stepKey: "mug/fill", says: amountOfUnits(9) },
    ];
    const [proposal] = recipeProposals(evidence, { unit: "sheet", cards, answers: [], countDays: [] });
    expect(proposal?.stepKeys).toEqual(["mug/wrap", "mug/fill"]);
    expect(unitsOf(proposal?.usesAbout ?? amountOfUnits(0))).toBe(13);
  });

  it("are worth a tenth of the card and what is taken at once", () => {
    expect(worthwhileChange(11, "sheet")).toBeCloseTo(1.1, 12);
    expect(worthwhileChange(3, "sheet")).toBe(0.5);
    expect(worthwhileChange(0.5, "sheet")).toBe(0.25);
    expect(worthwhileChange(1, "each")).toBe(1);
    expect(worthwhileChange(2.5, "foot")).toBeCloseTo(0.25, 12);
  });

  it("offer a recipe as a whole where its steps cannot be told apart", () => {
    const weeks = times.map((many, at) => ({
      "mug/wrap": { times: many + (at % 2), units: 5 },
      "mug/fill": { times: many, units: 6 },
    }));
    const intervals = trueShelf(weeks, { "mug/wrap": 1.25, "mug/fill": 1.25 });
    const noes = new Map<string, number>();
    const evidence = recipeEvidence(intervals, addDays(FIRST_DAY, 112), { holding, noes });
    const cards = [
      { stepKey: "mug/wrap", says: amountOfUnits(5) },
      { stepKey: "mug/fill", says: amountOfUnits(6) },
    ];
    const proposals = recipeProposals(evidence, { unit: "sheet", cards, answers: [], countDays: [] });
    const keys = proposals.flatMap((proposal) => proposal.stepKeys);
    expect(new Set(keys)).toEqual(new Set(["mug/wrap", "mug/fill"]));
    expect(keys).toHaveLength(2);
  });

  it("count noes by step", () => {
    const on = FIRST_DAY;
    const noes = saidNo([
      { stepKeys: ["a", "b"], answer: "no", on },
      { stepKeys: ["a"], answer: "no", on },
      { stepKeys: ["b"], answer: "later", on },
    ]);
    expect([...noes]).toEqual([
      ["a", 2],
      ["b", 1],
    ]);
  });
});
