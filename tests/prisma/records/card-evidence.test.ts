import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { amountOfUnits } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import { cardEvidence } from "#prisma/records/card-evidence";
import { changeCard } from "#prisma/records/change-card";
import { recordParcel } from "#prisma/records/parcels";
import { type RecipeAnswer, recipeAnswersOf, saveRecipeAnswer } from "#prisma/records/recipe-answers";
import { recipesOf, saveRecipe } from "#prisma/records/recipes";
import {
  countedShop,
  FIRST_COUNT,
  fillStep,
  MUGS,
  mugCard,
  sheets,
  sheetsParcel,
  weeksOf,
} from "./counted-shop";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const by = (on: Day) => ({ device: "desk", now: `${on}T21:00:00.000Z` });
const paper = async (today: Day) => (await cardEvidence(shop.db, today)).supplies[0];
const proposals = async (today: Day) => (await paper(today))?.proposals ?? [];
const answered = (answer: RecipeAnswer["answer"], answeredOn: Day): RecipeAnswer => ({
  id: `${answer}-${answeredOn}`,
  supplyId: "paper",
  stepIds: ["fill"],
  answeredOn,
  answer,
  says: amountOfUnits(11),
  about: amountOfUnits(13),
  counts: MUGS.length,
});
const PILE_AFTER = 1000 - 13 * MUGS.reduce((sum, mugs) => sum + mugs, 0);
const changed = { typedValue: "13", typedUnit: "sheets", note: "From the counts.", newId: "card-2" };

describe("what the counts say about a card", () => {
  it("is 13 sheets where the card says 11 and each mug takes 13", async () => {
    const today = await countedShop(shop.db, 13);
    const [proposal, ...others] = await proposals(today);
    expect(others).toEqual([]);
    expect(proposal?.stepKeys).toEqual(["fill"]);
    expect(sheets(proposal?.says)).toBe(11);
    expect(sheets(proposal?.usesAbout)).toBe(13);
    expect(proposal?.counts).toBe(MUGS.length);
    const total = (await paper(today))?.evidence.total;
    expect(total?.low).toBeLessThan(13 / 11);
    expect(total?.high).toBeGreaterThan(13 / 11);
    expect(total?.low).toBeGreaterThan(1);
  });

  it("is nothing where the card is right", async () => {
    const today = await countedShop(shop.db, 11);
    expect(await proposals(today)).toEqual([]);
    expect((await paper(today))?.evidence.total?.factor).toBeCloseTo(1, 2);
  });

  it("is read as of the day: what was counted or answered later is not known then", async () => {
    const today = await countedShop(shop.db, 13);
    await saveRecipeAnswer(shop.db, answered("no", addDays(today, 1)), by(today));
    expect(await proposals(today)).toHaveLength(1);
    expect(await proposals(addDays(FIRST_COUNT, 14))).toEqual([]);
    expect((await paper(addDays(FIRST_COUNT, 14)))?.evidence.counts).toBe(2);
  });

  it("goes on where a new version leaves the step as it is, and so does an answer", async () => {
    const today = await countedShop(shop.db, 13);
    const tape = fillStep("tape", 1, { words: "Close", supplyId: "bubble", position: 1 });
    const next = mugCard("card-2", [fillStep("fill-2", 11), tape], { effectiveFrom: today });
    await saveRecipe(shop.db, next, by(today).now);
    expect((await proposals(today))[0]?.stepKeys).toEqual(["fill-2"]);
    await saveRecipeAnswer(shop.db, answered("no", today), by(today));
    expect(await proposals(today)).toEqual([]);
  });

  it("is no longer asked once the card says what is used", async () => {
    const today = await countedShop(shop.db, 13);
    const next = mugCard("card-2", [fillStep("fill-2", 13)], { effectiveFrom: today });
    await saveRecipe(shop.db, next, by(today).now);
    expect(await proposals(today)).toEqual([]);
  });
});

describe("an answer to a proposal", () => {
  it("no: it is gone, and comes back after four more counts", async () => {
    const today = await countedShop(shop.db, 13);
    await saveRecipeAnswer(shop.db, answered("no", today), by(today));
    expect(await proposals(today)).toEqual([]);
    const pile = await weeksOf(shop.db, { from: today, pile: PILE_AFTER, weeks: 3, takes: 13 });
    expect(await proposals(addDays(today, 21))).toEqual([]);
    await weeksOf(shop.db, { from: addDays(today, 21), pile, weeks: 1, takes: 13 });
    expect(await proposals(addDays(today, 28))).toHaveLength(1);
  });

  it("later: it is gone, and comes back with the next count", async () => {
    const today = await countedShop(shop.db, 13);
    await saveRecipeAnswer(shop.db, answered("later", today), by(today));
    expect(await proposals(today)).toEqual([]);
    await weeksOf(shop.db, { from: today, pile: PILE_AFTER, weeks: 1, takes: 13 });
    expect(await proposals(addDays(today, 7))).toHaveLength(1);
  });

  it("is kept once, however often it is sent", async () => {
    const on = day("2026-05-01");
    await saveRecipeAnswer(shop.db, answered("no", on), by(on));
    await saveRecipeAnswer(shop.db, answered("no", on), by(on));
    expect(await recipeAnswersOf(shop.db, on)).toEqual([answered("no", on)]);
    expect(await recipeAnswersOf(shop.db, addDays(on, -1))).toEqual([]);
  });
});

describe("a card changed from the counts", () => {
  async function change(today: Day) {
    const [recipe] = await recipesOf(shop.db);
    if (recipe === undefined) throw new Error("no card");
    const newStepIds = recipe.steps.map(({ id }) => `${id}-2`);
    const step = { recipe, stepId: "fill", amount: amountOfUnits(13), newStepIds };
    return changeCard(shop.db, { ...changed, ...step }, answered("yes", today), by(today));
  }

  it("holds from that day with only that step changed; parcels packed before stay as they are", async () => {
    const today = await countedShop(shop.db, 13);
    const before = await shop.db.movement.findMany({ where: { cause: "packed" } });
    expect(await change(today)).toEqual({ kind: "saved" });
    const [old, now, ...others] = await recipesOf(shop.db);
    expect(others).toEqual([]);
    expect(old).toEqual(mugCard("card", [fillStep("fill", 11)]));
    expect(now).toEqual(
      mugCard("card-2", [fillStep("fill-2", 13)], { effectiveFrom: today, note: "From the counts." }),
    );
    expect(await shop.db.movement.findMany({ where: { cause: "packed" } })).toEqual(before);
    expect(await shop.db.parcelPiece.count({ where: { recipeId: "card" } })).toBe(before.length);
    expect((await recipeAnswersOf(shop.db, today)).map(({ answer }) => answer)).toEqual(["yes"]);
    expect(await proposals(today)).toEqual([]);
  });

  it("is not written, nor is the yes, where parcels already hold to a version of that day", async () => {
    const last = await countedShop(shop.db, 13);
    const today = addDays(last, 1);
    await saveRecipe(
      shop.db,
      mugCard("today", [fillStep("fill-t", 11)], { effectiveFrom: today }),
      by(today).now,
    );
    await recordParcel(shop.db, sheetsParcel("packed-today", 11, { packedOn: today }), by(today));
    expect(await change(today)).toEqual({ kind: "in-use", effectiveFrom: today });
    expect(await recipeAnswersOf(shop.db, today)).toEqual([]);
    expect(await recipesOf(shop.db)).toHaveLength(2);
  });

  it("is refused where the step is not of the card", async () => {
    const recipe = mugCard("card", [fillStep("fill", 11)]);
    const step = { recipe, stepId: "other", amount: amountOfUnits(13), newStepIds: ["a"] };
    const asked = changeCard(shop.db, { ...changed, ...step }, answered("yes", FIRST_COUNT), by(FIRST_COUNT));
    await expect(asked).rejects.toThrow("changeCard requires a step of the card, got other");
  });
});
