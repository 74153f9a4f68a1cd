import { describe, expect, it } from "vitest";
import { neededInside } from "#app/pack/listing/needed-inside.ts";
import { refusedDraftWords } from "#app/pack/listing/refused-draft-words.ts";
import { sizesAnswer } from "#app/pack/listing/sizes-answer.ts";
import { sizesQuestion } from "#app/pack/listing/sizes-question.ts";
import { takenAsWords } from "#app/pack/listing/taken-as-words.ts";
import { USUAL_HABITS } from "#lib/packing/habits";
import { chosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import { smallestDraft } from "#lib/packing/recipe/smallest-draft";
import { learnedWeights } from "#lib/packing/weight/learned-weights";
import { day } from "#lib/units/day";
import * as bench from "../../../lib/packing/bench-shop";
import { SMALL_CHOICES } from "../small-choices";

const supplies = [
  bench.tissue,
  bench.paper,
  bench.smallBubble,
  bench.largeBubble,
  bench.householdTape,
  bench.cartonTape,
];
const cartons = [bench.cartonOf(12, 12, 12), bench.cartonOf(8, 8, 8)];
/** A cushion of 1 1/4 in, so that the mug goes into the 8 in cube. */
const habits = {
  ...USUAL_HABITS,
  cushionUm: { ...USUAL_HABITS.cushionUm, usual: bench.inches(1.25) },
};
/** Cents: tissue 3, paper 7, small bubble 14, 110 yd of tape 300, carton 80; a strip of household tape 0. */
const prices = new Map([
  ["tissue", 30_000],
  ["paper", 70_000],
  ["small-bubble", 140_000],
  ["household-tape", 0],
  ["carton-tape", 9091],
  ["carton-8-8-8", 800_000],
]);
const ground = {
  habits,
  shelf: { supplies, cartons, undescribed: [] },
  terms: { masses: new Map(), book: new Map<string, number>(), replacement: prices },
};
const choices = { ...SMALL_CHOICES, defaultStyle: "mixed" as const, steps: [{ label: "2 lb", mg: 907_185 }] };
const NO_CARD = { card: null, zones: [] };

const asked = (change: Record<string, string> = {}) => {
  const query = { type: "new", form: "round", sizes: "4.5 x 4 in", bare: "370 g", ...change };
  const ids = ground.shelf.cartons.map(({ supplyId }) => supplyId);
  const read = sizesQuestion(query, ids, "imperial");
  if (read.kind === "unreadable") throw new Error(JSON.stringify(read.problems));
  return read.question;
};
const answered = (change: Record<string, string> = {}, known = choices) => {
  const outcome = sizesAnswer(asked(change), ground, known, NO_CARD);
  if (outcome.kind !== "answered") throw new Error(JSON.stringify(outcome));
  return outcome;
};

describe("the answer by sizes", () => {
  // A mug of 370 g, 4.5 in across with its handle and 4 in high, in an 8 in cube. The trade's own table of recipes (from
  // memory, weighed by nobody) has 797 g for it: 1 sheet of tissue, 4 pieces of bubble with a pad for the handle, 7 sheets.
  it("takes each line as reckoned by hand", () => {
    const { recipe, carton } = answered().draft;
    expect(carton.supplyId).toBe("carton-8-8-8");
    expect(recipe.steps.map(({ supplyId, used }) => `${supplyId}: ${used}`)).toEqual([
      // 0.8 × π/4 × 4.5² × 4 = 50.9 cu in, 60 % of it at 86 × 600/864 × 17/48.8 = 20.8 cu in a sheet: 1.47
      "tissue: 1½ sheets",
      // π × 4.5 + 2 = 16.1 in by 4 + 4.5 = 8.5 in, of a third of 30 × 20 in: 20 × 10 in
      "tissue: ⅓ sheet",
      // 2 π × 4.5 + 4 π × 3/16 + 2 = 32.6 in: three torn pieces of 12 in
      "small-bubble: 3 pieces",
      "household-tape: 3 strips",
      // 512 less 5.25 × 5.25 × 4.75 = 131.1 is 380.9 cu in, at 52 a sheet 7.33: 7½ sheets over base, sides and top
      "paper: 1½ sheets",
      "paper: 3½ sheets",
      "paper: 2½ sheets",
      // 2 × (8 + 5.5 + 2 × (8 + 4)) = 75 in
      "carton-tape: 6¼ ft",
    ]);
  });

  it("weighs what its lines, its carton and its papers do", () => {
    // 370 + 1.8333 × 6.58 + 3 × 4.645 + 3 × 0.1 + 7.5 × 27.216 + 6.25 × 0.701 + 10 g, and the blank of the carton:
    // 34 × 16 in = 3.78 sq ft at 0.115 lb, 197.06 g
    const byHand = 370 + 12.063 + 13.935 + 0.3 + 204.12 + 4.381 + 10 + 197.061;
    const { answer, draft } = answered();
    expect(answer.weight.kind === "expected" && answer.weight.mg / 1000).toBeCloseTo(byHand, 1);
    expect(draft.recipe.mass.guessed).toEqual(["carton-8-8-8"]);
    // A piece of bubble less than in the trade's table, half a sheet of paper and 5/6 of tissue more.
    expect(Math.abs(byHand - 797 - (-4.6 + 13.6 + 5.5))).toBeLessThan(1);
  });

  it("costs what its lines and its carton do, and names what has no price", () => {
    // 1.8333 × 3 + 3 × 14 + 7.5 × 7 + 6.25 × 0.9091 + 80 = 185.68 cents
    expect(answered().answer.cost.replacement.cost / 10_000).toBeCloseTo(185.68, 1);
    expect(answered().answer.cost.book).toEqual({
      cost: 0,
      unknown: ["tissue", "small-bubble", "household-tape", "paper", "carton-tape", "carton-8-8-8"],
    });
  });

  it("has the spread of a guess: a tenth more holds nine times in ten", () => {
    const { outlook } = answered().answer;
    expect(outlook?.weight).toMatchObject({ guess: true, basis: "guess", parcels: 0 });
    const likely = outlook?.weight.likelyMg ?? 0;
    expect((outlook?.mostMg ?? 0) / likely).toBeCloseTo(1.1, 3);
    // 2 lb is 95.4 g over 811.8 g, and a tenth is 1.2816 deviations: 1.506 deviations, 93.4 % by the normal table
    expect(outlook?.steps[0]?.odds).toBeCloseTo(0.934, 2);
    expect(outlook?.promise?.label).toBe("2 lb");
  });

  it("learns from how the shop's parcels of other kinds differed from their bills", () => {
    const parcels = Array.from({ length: 40 }, (_, at) => ({
      itemTypeId: at % 2 === 0 ? "mug" : "vase",
      cartonId: "cube-12",
      style: "paper" as const,
      packedOn: day("2026-03-01"),
      predictedMg: 800_000,
      scaleMg: 880_000 + (at % 5) * 1000,
      unusual: false,
    }));
    const weights = learnedWeights(parcels, day("2026-03-10")).known;
    const alone = answered().answer.outlook?.weight.likelyMg ?? 0;
    const learned = answered({}, { ...choices, weights }).answer.outlook?.weight;
    expect(learned?.guess).toBe(true);
    // Every parcel was a tenth over its bill: what is not known of a new kind draws only part of the way.
    expect((learned?.likelyMg ?? 0) / alone).toBeGreaterThan(1.05);
    expect((learned?.likelyMg ?? 0) / alone).toBeLessThan(1.12);
  });

  it("names what was never weighed instead of a promise", () => {
    const unweighed = supplies.map((each) => (each.supplyId === "paper" ? { ...each, massMg: null } : each));
    const shelf = { ...ground.shelf, supplies: unweighed };
    const outcome = sizesAnswer(asked(), { ...ground, shelf }, choices, NO_CARD);
    expect(outcome).toMatchObject({
      kind: "answered",
      answer: {
        outlook: null,
        weight: { kind: "part-known", unknown: ["Packing paper"] },
        postageMinor: null,
      },
    });
  });
});

describe("a carton that leaves less than the cushion asked for", () => {
  const usual = { ...ground, habits: USUAL_HABITS };
  const inside = (change: Record<string, string>) => {
    const outcome = sizesAnswer(asked(change), usual, choices, NO_CARD);
    if (outcome.kind !== "answered") throw new Error(JSON.stringify(outcome));
    return outcome.draft;
  };

  it("is taken where it is short of a hair only, as sizes are typed no finer", () => {
    // Wrapped, 3.2 × 3.2 in grow by 0.7524 in: the 8 in cube leaves 2.024 in; 3.3 in 1.974 in, 3.6 in 1.82 in of the 2 in.
    const short = inside({ sizes: "3.3 x 3 in" });
    expect(inside({ sizes: "3.2 x 3 in" })).toMatchObject({
      carton: { supplyId: "carton-8-8-8" },
      askedUm: null,
    });
    expect(short).toMatchObject({ carton: { supplyId: "carton-8-8-8" }, askedUm: 50_800 });
    expect(short.recipe.room.leavesUm / 25_400).toBeCloseTo(1.974, 2);
    expect(inside({ sizes: "3.6 x 3 in" }).carton.supplyId).toBe("carton-12-12-12");
  });

  it("is taken where the seller names it, and said to leave less", () => {
    const named = inside({ carton: "carton-8-8-8" });
    expect(named).toMatchObject({ carton: { supplyId: "carton-8-8-8" }, askedUm: 50_800 });
    const words = takenAsWords(asked(), named, () => "Cube 8", "imperial");
    expect(words).toMatch(
      /^Taken as a round piece, hollow like a mug, 4½ × 4½ × 4 in\. Cube 8 leaves 1\.37 in of the 2 in/,
    );
  });

  it("is offered beside the larger one", () => {
    expect(inside({}).tight.map(({ cartonId }) => cartonId)).toEqual(["carton-8-8-8"]);
  });

  it("is refused where the wrapped piece does not go in", () => {
    const tooLarge = asked({ sizes: "7.5 x 4 in", carton: "carton-8-8-8" });
    expect(sizesAnswer(tooLarge, usual, choices, NO_CARD)).toMatchObject({
      kind: "no-draft",
      draft: { kind: "no-carton" },
    });
  });
});

describe("a piece that no carton holds", () => {
  const pan = { form: "flat", sizes: "16 x 16 x 2 in" };

  it("is told the inside that would do, which then does", () => {
    const outcome = sizesAnswer(asked(pan), ground, choices, NO_CARD);
    if (outcome.kind !== "no-draft" || outcome.needed === null) throw new Error(JSON.stringify(outcome));
    const request = {
      piece: asked(pan).piece,
      pieces: 1,
      habits,
      supplies: chosenSupplies("mixed", supplies),
      measures: "imperial" as const,
    };
    const carton = { supplyId: "new", inside: outcome.needed, boardUm: 0, massMg: null };
    expect(smallestDraft(request, [carton]).kind).toBe("drafted");
    const tighter = { ...outcome.needed, heightUm: outcome.needed.heightUm - bench.inches(0.5) };
    expect(smallestDraft(request, [{ ...carton, inside: tighter }]).kind).toBe("no-carton");
    // 16 in with two layers of bubble of 3/16 in on both sides, and 1 1/4 in all round: 19.25 in, and a hair of tissue
    const cube = { ...bench.cartonOf(12, 12, 12), id: "carton-12-12-12", name: "Cube 12" };
    const words = refusedDraftWords(outcome, { supplies: [cube], measures: "imperial" });
    expect(words).toEqual({
      field: "carton",
      words:
        "Cube 12 is 4.75 in too short for the wrapped piece. One of 19½ × 19½ × 5½ in inside, or larger, would do.",
    });
  });

  it("is told so too where no carton has its sizes written down", () => {
    const shelf = { ...ground.shelf, cartons: [] };
    const outcome = sizesAnswer(asked(), { ...ground, shelf }, choices, NO_CARD);
    if (outcome.kind !== "no-draft") throw new Error(JSON.stringify(outcome));
    expect(refusedDraftWords(outcome, choices).words).toBe(
      "No carton in use has its sizes written down: add them under Supplies. One of 8 × 8 × 7½ in inside, or larger, would do.",
    );
  });

  it("has no inside where the supplies are to blame", () => {
    const taped = {
      ...bench.cartonTape,
      form: { kind: "loose", mlPerUnit: 1 } as const,
      useUnit: "each" as const,
    };
    const request = {
      piece: asked().piece,
      pieces: 1,
      habits,
      supplies: { ...bench.NO_SUPPLIES, seal: taped },
      measures: "imperial" as const,
    };
    expect(neededInside(request, [])).toBeNull();
  });
});
