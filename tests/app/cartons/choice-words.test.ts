import { describe, expect, it } from "vitest";
import { choiceReason, cutWords, leftOutWords, valueText } from "#app/cartons/choice-words.ts";
import { cartonChoices } from "#lib/cartons/choice/carton-choices";
import type { LeftOutReason } from "#lib/cartons/choice/left-out";
import { ratio } from "#lib/postage/ratio";
import { CENT, carton, mugRequest } from "../../lib/cartons/choice/mug-bench";
import { DOLLARS } from "./small-shelf";
import { wholeOf } from "./whole-choice";

const cheapest = wholeOf(cartonChoices(mugRequest([carton("cube-8", [8, 8, 8], 80)])).answers[0]);
const more = (cents: number, asSpent: number) => ({ value: cents * CENT, asSpentValue: asSpent * CENT });

describe("why a carton is offered, in words", () => {
  const reason = (change: Partial<typeof cheapest>) => choiceReason({ ...cheapest, ...change }, DOLLARS);

  it("is that it is the cheapest, and may use up what sits as well", () => {
    expect(reason({})).toBe("Cheapest of what is there.");
    expect(reason({ isToUseUp: true })).toBe("Cheapest of what is there, and it uses up what sits.");
  });

  it("is that it uses up what sits, with what that costs in both ways of counting", () => {
    expect(reason({ why: "toUseUp", more: more(55, -20) })).toBe(
      "Uses up what sits: $0.20 less than the cheapest if its own price counts as spent, $0.55 more if not.",
    );
    expect(reason({ why: "toUseUp", more: more(15, 15) })).toBe(
      "Uses up what sits: $0.15 more than the cheapest if its own price counts as spent.",
    );
    expect(reason({ why: "toUseUp", more: null })).toContain("nothing else that is there would do");
  });

  it("is that it would save, though none is there", () => {
    expect(reason({ why: "notOnHand", more: more(-130, -130) })).toBe(
      "None of it is there; it would save $1.30.",
    );
    expect(reason({ why: "notOnHand", more: null })).toContain("nothing that is there would do");
  });

  it("is that cutting it down saves, with minutes that are a guess", () => {
    const request = mugRequest([carton("tall", [8, 8, 20], 80)]);
    const cut = cartonChoices(request)
      .answers.map((each) => each.cut)
      .find((each) => each !== null);
    if (cut === undefined) throw new Error("a 20 in high carton is worth cutting down");
    const words = cutWords(cut, DOLLARS);
    // Mug and cushion are 6.75 in high, 171.45 mm; in steps of 5 mm that is 175 mm.
    const fill = ((64 * (20 - 175 / 25.4)) / 52) * 7;
    expect(words).toContain(`saves ${valueText(fill * CENT, DOLLARS)} of fill`);
    expect(words).toContain("about 5 minutes, a guess");
  });
});

describe("why a carton is not offered, in words", () => {
  const words = (reason: LeftOutReason) => leftOutWords(reason, DOLLARS);

  it("is a limit, whose it is and by how much it is passed, not rounded down to the limit itself", () => {
    const weight = { measure: "weight", limit: ratio(20n), actual: ratio(81n, 4n) } as const;
    expect(words({ kind: "over", limit: { rule: "certificate", ...weight } })).toBe(
      "its rating allows 20 lb gross, this would be 20.3 lb",
    );
    const girth = { measure: "lengthAndGirth", limit: ratio(108n), actual: ratio(120n) } as const;
    expect(words({ kind: "over", limit: { rule: "postalGrade", ...girth } })).toBe(
      "the post's rule for fragile goods allows 108 in of length and girth, this would be 120 in",
    );
  });

  it("says what a limit comes to in the measures of a metric shop", () => {
    const limit = { rule: "certificate", measure: "weight", limit: ratio(65n), actual: ratio(70n) } as const;
    // 65 lb are 29.48 kg.
    expect(leftOutWords({ kind: "over", limit }, { ...DOLLARS, measures: "metric" })).toMatch(
      /allows 65 lb \(29[.,]4\d* kg\) gross/,
    );
  });

  it.each([
    [{ kind: "innerOnly", reason: "unrated" }, "has no rating: an inner box"],
    [{ kind: "noPostage" }, "no price is known for its size"],
    [{ kind: "notOnHand", savesValue: 45 * CENT }, "none is there; it would save $0.45"],
  ] as const)("is %j", (reason, text) => {
    expect(words(reason)).toContain(text);
  });

  it("is that the pieces are too large, or that it could not be told", () => {
    const small = cartonChoices(mugRequest([carton("cube-5", [5, 5, 5], 40)])).leftOut[0];
    if (small === undefined) throw new Error("a 5 in cube is too small");
    expect(words(small.reason)).toBe("one piece is too large for it, however it is turned");
  });
});
