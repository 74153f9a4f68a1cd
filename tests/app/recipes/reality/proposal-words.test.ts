import { describe, expect, it } from "vitest";
import { proposalReasons, proposalTitle } from "#app/recipes/reality/proposal-words.ts";
import { amountOfUnits } from "#lib/units/amount";
import { proposal, STEPS, SUPPLY } from "./reality-fixture";

const of = (changes: Parameters<typeof proposal>[0] = {}) => ({
  supply: SUPPLY,
  proposal: proposal(changes),
  steps: STEPS,
});

describe("the words of a proposal", () => {
  it("say the card, what is used and what the card says", () => {
    expect(proposalTitle(of())).toBe(
      "Mug pair on paper: about 13 sheets of Packing paper, the card says 11 sheets",
    );
  });

  it("say the step and what it rests on", () => {
    expect(proposalReasons(of())).toEqual([
      "The step “Fill”, taken once a parcel.",
      "From 8 counts; 9 times in 10 the real use is 12¼ sheets to 14 sheets.",
    ]);
  });

  it("say of several steps that the counts do not tell which it is", () => {
    const both = of({ stepKeys: ["fill", "wrap"], says: amountOfUnits(22), usesAbout: amountOfUnits(26) });
    expect(proposalTitle(both)).toBe(
      "Mug pair on paper: about 26 sheets of Packing paper together, the card says 22 sheets",
    );
    expect(proposalReasons(both)[0]).toBe(
      "The steps “Fill” and “Wrap”, each taken once: the counts tell what they take together, but not which of them it is.",
    );
  });
});
