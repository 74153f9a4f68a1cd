import type { CountInterval } from "#lib/packing/learning/count-interval";
import { type RecipeEvidence, recipeEvidence } from "#lib/packing/learning/recipe-evidence";
import {
  type ProposalAnswer,
  type RecipeProposal,
  recipeProposals,
  saidNo,
} from "#lib/packing/learning/recipe-proposals";
import type { RecipeStep, RecipeVersion } from "#lib/packing/recipe-version";
import type { Day } from "#lib/units/day";
import type { Database } from "../client";
import { countIntervals } from "./count-intervals";
import { itemTypesOf } from "./item-types";
import { type RecipeAnswer, recipeAnswersOf } from "./recipe-answers";
import { type Recipe, recipesOf } from "./recipes";
import { rememberedUntilWritten } from "./remembered";
import { type Supply, suppliesOf } from "./supplies";
import { unchangedSteps } from "./unchanged-steps";

/** A step of a card that holds, with the card and what is packed by it. */
export type CardStepToday = { readonly step: RecipeStep; readonly recipe: Recipe; readonly itemType: string };

/** What the counts of one supply say about the cards that take it. */
export type SupplyEvidence = {
  readonly supply: Pick<Supply, "id" | "name" | "useUnit">;
  readonly evidence: RecipeEvidence;
  readonly proposals: readonly RecipeProposal[];
  /** oldest first */
  readonly countDays: readonly Day[];
};

/** What all counts say on a day. */
export type CardEvidence = {
  readonly supplies: readonly SupplyEvidence[];
  /** by step key: the id of a step of a card that holds */
  readonly steps: ReadonlyMap<string, CardStepToday>;
  /** the oldest first; their steps are those that hold, where they still do */
  readonly answers: readonly RecipeAnswer[];
};

/**
 * What the counts say about the cards that hold on a day, and what they propose. Steps have the id of the step in the card
 * that holds as their key; those of cards that were changed since keep their own.
 *
 * @param db the database
 * @param today the day
 * @returns supplies in use with at least two counts, in the shop's order; kept until the database is written
 */
export async function cardEvidence(db: Database, today: Day): Promise<CardEvidence> {
  return rememberedUntilWritten(db, `card evidence ${today}`, () => workedOut(db, today));
}

async function workedOut(db: Database, today: Day): Promise<CardEvidence> {
  const [counted, supplies, itemTypes, versions, given] = await Promise.all([
    countIntervals(db, today),
    suppliesOf(db),
    itemTypesOf(db),
    recipesOf(db),
    recipeAnswersOf(db, today),
  ]);
  const names = new Map(itemTypes.map(({ id, name }) => [id, name]));
  const inUse = versions.filter(({ itemTypeId }) => names.has(itemTypeId));
  const goesOn = unchangedSteps(inUse, today);
  const steps = new Map(
    [...goesOn.values()].map(({ step, recipe }) => [
      step.id,
      { step, recipe, itemType: names.get(recipe.itemTypeId) ?? recipe.itemTypeId },
    ]),
  );
  const answers = given.map((answer) => ({
    ...answer,
    stepIds: answer.stepIds.map((id) => goesOn.get(id)?.step.id ?? id),
  }));
  const byId = new Map(counted.map((each) => [each.supplyId, each]));
  return {
    supplies: supplies.flatMap(({ id, name, useUnit }) => {
      const { intervals = [], countDays = [] } = byId.get(id) ?? {};
      if (intervals.length === 0) return [];
      const own = answers.flatMap(({ supplyId, answer, stepIds, answeredOn }): ProposalAnswer[] =>
        supplyId === id && answer !== "yes" ? [{ stepKeys: stepIds, answer, on: answeredOn }] : [],
      );
      const evidence = evidenceOf(
        id,
        intervals.map((interval) => carriedOn(interval, goesOn)),
        { today, holding: steps, noes: saidNo(own) },
      );
      const cards = [...steps.values()].flatMap(({ step }) =>
        step.supplyId === id ? [{ stepKey: step.id, says: step.amount }] : [],
      );
      const proposals = recipeProposals(evidence, { unit: useUnit, cards, answers: own, countDays });
      return [{ supply: { id, name, useUnit }, evidence, proposals, countDays }];
    }),
    steps,
    answers,
  };
}

type Said = {
  readonly today: Day;
  readonly holding: ReadonlyMap<string, CardStepToday>;
  readonly noes: ReadonlyMap<string, number>;
};

/** The evidence last worked out for each supply, with what it was worked out from. */
const lastEvidence = new Map<string, { readonly from: string; readonly evidence: RecipeEvidence }>();

/**
 * `recipeEvidence`, not worked out again while all that it is made from is the same: it takes a third of a second for a
 * supply of many cards, and a parcel packed today changes nothing between two counts.
 */
function evidenceOf(
  supplyId: string,
  intervals: readonly CountInterval[],
  { today, holding, noes }: Said,
): RecipeEvidence {
  const used = new Set(intervals.flatMap(({ uses }) => uses.map(({ stepKey }) => stepKey)));
  const held = [...used].filter((key) => holding.has(key));
  const from = JSON.stringify([intervals, today, held, [...noes]]);
  const last = lastEvidence.get(supplyId);
  if (last?.from === from) return last.evidence;
  const evidence = recipeEvidence(intervals, today, { holding: new Set(held), noes });
  lastEvidence.set(supplyId, { from, evidence });
  return evidence;
}

/** Uses of earlier versions of a step that goes on unchanged, as uses of the one that holds. */
function carriedOn(
  interval: CountInterval,
  goesOn: ReadonlyMap<string, { readonly step: RecipeStep; readonly recipe: RecipeVersion }>,
): CountInterval {
  return {
    ...interval,
    uses: interval.uses.map((use) => {
      const now = goesOn.get(use.stepKey);
      return now === undefined ? use : { ...use, stepKey: now.step.id, recipeKey: now.recipe.id };
    }),
  };
}
