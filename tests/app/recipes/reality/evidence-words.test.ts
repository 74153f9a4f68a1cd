import { describe, expect, it } from "vitest";
import { stepLines, supplyWords } from "#app/recipes/reality/evidence-words.ts";
import { STEPS, stepEvidence, supplyEvidence } from "./reality-fixture";

const linesOf = (...steps: ReturnType<typeof stepEvidence>[]) => {
  const { evidence } = supplyEvidence();
  return stepLines({ evidence: { ...evidence, steps } }, STEPS);
};

describe("the words of what counts say", () => {
  it("give a supply's factor with its interval and its counts", () => {
    expect(supplyWords(supplyEvidence())).toBe(
      "1.08 times the cards, truly 1.02 to 1.14, from 12 counts after the first.",
    );
  });

  it("say where no card took the supply", () => {
    const evidence = { total: null, steps: [], recipes: [], counts: 1 };
    expect(supplyWords({ evidence })).toBe("no step of a card took it; from 1 count after the first.");
  });

  it("give a step's factor where it is told", () => {
    expect(linesOf(stepEvidence())).toEqual([
      { name: "Mug pair on paper, “Fill”", words: "1.18 times the card, truly 1.10 to 1.26, from 8 counts." },
    ]);
  });

  it("name what a step can't be told apart from", () => {
    const [line] = linesOf(stepEvidence({ told: false, mixedUpWith: ["wrap", "gone"] }));
    expect(line?.words).toBe(
      "can’t be told apart from Mug pair on paper, “Wrap” and an earlier card yet: they go together from count to count.",
    );
  });

  it("say where the counts are too few, and leave out cards that hold no longer", () => {
    const few = stepEvidence({ told: false, counts: 1 });
    expect(linesOf(few, stepEvidence({ stepKeys: ["gone"] })).map(({ words }) => words)).toEqual([
      "the counts say little of it yet: 1 count saw it used.",
    ]);
  });
});
