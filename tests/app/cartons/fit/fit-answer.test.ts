import { describe, expect, it } from "vitest";
import type { AskedFit } from "#app/cartons/fit/asked-fit.ts";
import { candidateOf, type FitGround, fitAnswer } from "#app/cartons/fit/fit-answer.ts";
import { fitFinding } from "#app/cartons/fit/fit-finding.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { USUAL_CARTON_SETTINGS } from "#prisma/records/carton-terms";
import { CENT, IN, MUG_TERMS } from "../../../lib/cartons/choice/mug-bench";
import * as bench from "../../../lib/packing/bench-shop";
import { cartonSupply, counted, onShelf } from "../small-shelf";

/** A cushion of 1 1/4 in. */
const habits = { ...USUAL_HABITS, cushionUm: { ...USUAL_HABITS.cushionUm, usual: 1.25 * IN } };
const cube = (inches: number, cents: number, onHand = 20) => {
  const supply = cartonSupply(`cube-${inches}`, [inches, inches, inches]);
  return onShelf(supply, {
    stock: new Map([[supply.id, counted(supply.id, onHand)]]),
    replacement: new Map([[supply.id, cents * CENT]]),
  });
};
const ground: FitGround = {
  cartons: [cube(12, 130), cube(8, 80), cube(7, 70)],
  settings: USUAL_CARTON_SETTINGS,
  habits,
  wrap: {
    habits,
    shelf: { supplies: [bench.tissue, bench.smallBubble, bench.paper], cartons: [], undescribed: [] },
    measures: "imperial",
  },
  termsIn: (style) => (style === "bubble" ? null : { terms: MUG_TERMS, fillName: "paper", notKnown: [] }),
};
const MUG: AskedFit = {
  pieces: [{ count: 1, um: [4.5 * IN, 4.5 * IN, 4 * IN] }],
  areBare: true,
  style: null,
  massMg: 370_000,
  cushionUm: null,
  isUpright: false,
  isFragile: true,
};
const answered = (change: Partial<AskedFit> = {}, on = ground) => {
  const answer = fitAnswer({ ...MUG, ...change }, on, "mixed");
  if (answer.kind !== "answered") throw new Error(JSON.stringify(answer));
  return answer;
};
const first = (answer: ReturnType<typeof answered>) => {
  const [choice] = answer.choices.answers;
  if (choice === undefined) throw new Error("nothing is offered");
  return choice;
};

describe("the carton for some sizes", () => {
  // A mug of 4.5 x 4.5 x 4 in. Wrapped twice in bubble of 3/16 in and in tissue it is 5.25 x 5.25 x 4.75 in and a
  // hair; with 1.25 in on every side it needs 7.75 x 7.75 x 7.25 in: the 8 in cube, not the 7 in one.
  it("is the cheapest that the mug fits with its wrap and cushion, and says what it comes to", () => {
    const answer = answered();
    const choice = first(answer);
    expect([choice.carton.id, choice.why]).toEqual(["cube-8", "cheapest"]);
    expect(answer.cushionUm).toBe(31_750);
    // 512 less 130.9 cu in at 52 a sheet are 7.33 sheets at 7 cents; 75 in of tape at 300 cents for 110 yards
    expect(choice.cost.fillValue / CENT).toBeCloseTo(51.3, 1);
    expect(choice.cost.tapeValue / CENT).toBeCloseTo(5.68, 2);
    expect(choice.total.value / CENT).toBeCloseTo(80 + 51.3 + 5.68 + 600, 1);
  });

  it("is a smaller one where the mug is wrapped already: 4.5 and twice 1.25 in are 7 in", () => {
    const answer = answered({ areBare: false });
    expect(first(answer).carton.id).toBe("cube-7");
    expect(answer.load.massMg).toBe(370_000 + habits.papersMg);
    const wrapMg = answered().load.massMg - answer.load.massMg;
    // Wraps of a mug weigh about 15 to 30 g: common practice, no source.
    expect(wrapMg).toBeGreaterThan(10_000);
    expect(wrapMg).toBeLessThan(40_000);
  });

  it("has no postage where no weight was said, and is judged by its materials", () => {
    const choice = first(answered({ massMg: null }));
    expect(choice.carton.id).toBe("cube-8");
    expect(choice.cost.postageValue).toBeNull();
    expect(choice.total.value / CENT).toBeCloseTo(80 + 51.3 + 5.68, 1);
  });

  it("is another with another cushion: 3 in on every side is beyond the 8 in cube", () => {
    const answer = answered({ cushionUm: 3 * IN });
    expect(answer.cushionUm).toBe(3 * IN);
    expect(first(answer).carton.id).toBe("cube-12");
  });

  it("holds as many as are asked, and weighs their wraps for each", () => {
    const four = answered({ pieces: [{ count: 4, um: [4.5 * IN, 4.5 * IN, 4 * IN] }] });
    expect(four.load.pieces).toHaveLength(4);
    const wraps = (answer: typeof four) => answer.load.massMg - 370_000 - habits.papersMg;
    expect(wraps(four)).toBeCloseTo(4 * wraps(answered()), 6);
  });

  it("is none where all are too small, with the reason", () => {
    const small = { ...ground, cartons: [cube(7, 70)] };
    const { choices } = answered({}, small);
    expect(choices.answers).toEqual([]);
    expect(choices.leftOut).toMatchObject([{ cartonId: "cube-7", reason: { kind: "doesNotFit" } }]);
  });

  it("is not told where nothing on the shelf fills", () => {
    expect(fitAnswer({ ...MUG, style: "bubble" }, ground, "mixed")).toEqual({
      kind: "no-fill",
      style: "bubble",
    });
  });

  it("counts a carton without a price as costing nothing, and reused board as saved", () => {
    const supply = cartonSupply("used", [8, 8, 8], { boardUsed: true, useFirst: true });
    expect(candidateOf(onShelf(supply))).toMatchObject({
      value: 0,
      condition: "reused",
      isSaved: true,
      useFirst: true,
      onHand: null,
    });
  });
});

describe("the first line of the fit finder", () => {
  const nameOf = (id: string) => `Carton ${id}`;

  it("asks while nothing was asked", () => {
    expect(fitFinding(null, nameOf)).toBe("Which carton do these pieces go in?");
  });

  it("names the carton, and says where none is there or none would do", () => {
    expect(fitFinding(answered(), nameOf)).toBe("Carton cube-8.");
    expect(fitFinding(answered({}, { ...ground, cartons: [cube(8, 80, 0)] }), nameOf)).toBe(
      "Carton cube-8 would do, but none of it is there.",
    );
    expect(fitFinding(answered({}, { ...ground, cartons: [cube(7, 70)] }), nameOf)).toBe(
      "None of your cartons would do.",
    );
    expect(fitFinding({ kind: "no-fill", style: "bubble" }, nameOf)).toContain("nothing on the shelf fills");
  });
});
