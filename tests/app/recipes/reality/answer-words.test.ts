import { describe, expect, it } from "vitest";
import { answerLines } from "#app/recipes/reality/answer-words.ts";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { RecipeAnswer } from "#prisma/records/recipe-answers";
import { cardsEvidence } from "./reality-fixture";

const answer = (changes: Partial<RecipeAnswer>): RecipeAnswer => ({
  id: "first",
  supplyId: "paper",
  stepIds: ["fill"],
  answeredOn: day("2026-03-09"),
  answer: "no",
  says: amountOfUnits(11),
  about: amountOfUnits(13),
  counts: 8,
  ...changes,
});
const linesOf = (...answers: RecipeAnswer[]) =>
  answerLines(cardsEvidence({ answers }), day("2026-03-20"), (stepId) => ({
    name: "Mug pair on paper",
    laterFrom: stepId === "planned" ? day("2031-03-04") : null,
  }));

describe("the words of an answer", () => {
  it("say after how many more counts a no is asked again", () => {
    expect(linesOf(answer({}))).toEqual([
      {
        id: "first",
        title:
          "Mug pair on paper: “No, the card is right” on 9 Mar to about 13 sheets of Packing paper instead of 11 sheets",
        words:
          "Asked again after 3 more counts of Packing paper at the earliest, if the counts then still say so in spite of your no.",
      },
    ]);
  });

  it("say that later waits for the next count, and nothing once it came", () => {
    const [line] = linesOf(answer({ answer: "later", answeredOn: day("2026-03-16") }));
    expect(line?.words).toBe(
      "Asked again after 1 more count of Packing paper at the earliest, if the counts then still say so.",
    );
    expect(linesOf(answer({ answer: "later" }))).toEqual([]);
  });

  it("say what a yes changed, for four weeks, the latest answer first", () => {
    const yes = answer({ id: "yes", answer: "yes", stepIds: ["was"], answeredOn: day("2026-03-16") });
    expect(linesOf(answer({}), yes).map(({ id }) => id)).toEqual(["yes", "first"]);
    expect(linesOf(yes)[0]?.title).toBe(
      "Mug pair on paper says 13 sheets of Packing paper instead of 11 sheets since 16 Mar",
    );
    expect(linesOf(answer({ answer: "yes", answeredOn: day("2026-02-16") }))).toEqual([]);
  });

  it("say that a version written for later keeps its own amounts", () => {
    const yes = (stepId: string) => linesOf(answer({ answer: "yes", stepIds: [stepId] }))[0]?.words;
    expect(yes("planned")).toContain(
      "The version from 4 Mar 2031 is written already and has amounts of its own.",
    );
    expect(yes("was")).not.toContain("written already");
  });

  it("leave out a no about a card that holds no longer", () => {
    expect(linesOf(answer({ stepIds: ["gone"] }))).toEqual([]);
  });
});
