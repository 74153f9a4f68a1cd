import { describe, expect, it } from "vitest";
import { droppedStep } from "#lib/cushioning/dropped-step";
import { nanogramsOf } from "#lib/postage/exact-mass";
import type { StepOdds } from "#lib/postage/expected-postage";
import { stepFor } from "#lib/postage/step-for";
import { stepWords } from "#lib/postage/step-words";
import { typed } from "../postage/rate-card-fixture";
import { POUNDS, UP_TO_FOUR } from "./small-ways";

/** Odds of paying the steps up to 1, 2, 3 … lb, with those above 0 alone in the list, as postage tells them. */
function oddsOf(...chances: readonly number[]): StepOdds[] {
  let upTo = 0;
  return chances.flatMap((chance, at) => {
    upTo += chance;
    return chance === 0 ? [] : [{ step: poundStep(at + 1), chance, upTo, minor: 500 }];
  });
}

function poundStep(pounds: number): StepOdds["step"] {
  const [band] = POUNDS.bands;
  const step = band === undefined ? null : stepFor(band, 0, nanogramsOf(typed(String(pounds), "lb")));
  if (step === null) throw new RangeError(`the card has a step for every pound, not for ${pounds}`);
  return step;
}

function told(one: readonly StepOdds[], other: readonly StepOdds[]) {
  const dropped = droppedStep(one, other);
  return dropped === null ? null : { ...dropped, step: stepWords(dropped.step) };
}

describe("the step that divides two ways to pack most", () => {
  it("is the one with the greatest difference between the odds of staying under it", () => {
    // under 1 lb 0.1 and 0; under 2 lb 0.9 and 0.3; under 3 lb 1 and 0.9
    const dropped = told(oddsOf(0.1, 0.8, 0.1), oddsOf(0, 0.3, 0.6, 0.1));
    expect(dropped?.step).toBe("up to 2 lb");
    expect(dropped?.share).toBeCloseTo(0.6, 12);
    expect(dropped?.lighter).toBe("one");
  });

  it("says so where it is the other that stays under", () => {
    expect(told(oddsOf(0, 0.3, 0.7), oddsOf(0, 0.9, 0.1))).toMatchObject({
      step: "up to 2 lb",
      lighter: "other",
    });
  });

  it("sees a step that only one of them ever pays", () => {
    // One always pays up to 3 lb; of the other 0.25 pay up to 2 lb.
    expect(told(oddsOf(0, 0, 1), oddsOf(0, 0.25, 0.75))).toMatchObject({
      step: "up to 2 lb",
      share: 0.25,
      lighter: "other",
    });
    // And one beyond the card's last step.
    expect(told(oddsOf(0, 0, 0, 0, 1), oddsOf(0, 0, 0, 0, 0.5, 0.5))).toMatchObject({
      step: "up to 5 lb",
      share: 0.5,
      lighter: "one",
    });
  });

  it("is none where both pay each step as often, or but for 5 in 1,000", () => {
    expect(told(oddsOf(0, 0.4, 0.6), oddsOf(0, 0.4, 0.6))).toBeNull();
    expect(told(oddsOf(0, 0.404, 0.596), oddsOf(0, 0.4, 0.6))).toBeNull();
    expect(told(oddsOf(0, 0.406, 0.594), oddsOf(0, 0.4, 0.6))?.share).toBeCloseTo(0.006, 12);
    expect(told([], [])).toBeNull();
  });

  it("counts what is not carried as never staying under", () => {
    // Of the other, 0.3 are too heavy for a card that ends at 4 lb.
    expect(UP_TO_FOUR.bands[0]?.beyond.kind).toBe("notCarried");
    const dropped = told(oddsOf(0, 0, 0, 1), oddsOf(0, 0, 0, 0.7));
    expect(dropped?.step).toBe("up to 4 lb");
    expect(dropped?.share).toBeCloseTo(0.3, 12);
  });
});
