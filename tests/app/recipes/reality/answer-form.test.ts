import { describe, expect, it } from "vitest";
import { answerForm, askedForm, foundProposal } from "#app/recipes/reality/answer-form.ts";
import { amountOfUnits } from "#lib/units/amount";
import { cardsEvidence, proposal } from "./reality-fixture";

const asked = { supplyId: "paper", stepKeys: ["fill"], about: amountOfUnits(13) };

describe("an answer as it is sent", () => {
  it("is one of the three buttons", () => {
    expect(answerForm.safeParse({ answer: "later" }).success).toBe(true);
    const read = answerForm.safeParse({});
    expect(read.error?.issues[0]?.message).toBe("Press one of the buttons.");
  });

  it("is about a proposal with a key of its own", () => {
    const id = "0b54e0a4-7cc8-4c9c-8f4b-3a3c6e1a9d10";
    expect(askedForm.safeParse({ ...asked, id }).success).toBe(true);
    expect(askedForm.safeParse({ ...asked, id: "1" }).success).toBe(false);
    expect(askedForm.safeParse({ ...asked, id, about: 0.5 }).success).toBe(false);
  });

  it("is matched with what the counts still say, and with nothing else", () => {
    const evidence = cardsEvidence();
    expect(foundProposal(evidence, asked)?.proposal).toEqual(proposal());
    expect(foundProposal(evidence, { ...asked, about: amountOfUnits(12) })).toBeNull();
    expect(foundProposal(evidence, { ...asked, stepKeys: ["wrap"] })).toBeNull();
    expect(foundProposal(evidence, { ...asked, supplyId: "tissue" })).toBeNull();
  });
});
