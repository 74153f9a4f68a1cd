import type { StepEvidence } from "#lib/packing/learning/recipe-evidence";
import type { RecipeProposal } from "#lib/packing/learning/recipe-proposals";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import type { CardEvidence, CardStepToday, SupplyEvidence } from "#prisma/records/card-evidence";

export const SUPPLY = { id: "paper", name: "Packing paper", useUnit: "sheet" } as const;

function cardStep(id: string, words: string, per: "piece" | "parcel"): [string, CardStepToday] {
  const typed = { typedValue: "11", typedUnit: "sheets" };
  const step = { id, position: 0, words, supplyId: "paper", amount: amountOfUnits(11), per, ...typed };
  const head = {
    id: "card",
    itemTypeId: "mug-pair",
    style: "paper",
    effectiveFrom: day("2026-01-01"),
  } as const;
  const recipe = { ...head, commonPractice: false, note: null, steps: [step], cartons: [] };
  return [id, { step, recipe, itemType: "Mug pair" }];
}

export const STEPS = new Map([cardStep("fill", "Fill", "parcel"), cardStep("wrap", "Wrap", "piece")]);

export function proposal(changes: Partial<RecipeProposal> = {}): RecipeProposal {
  const [says, usesAbout] = [amountOfUnits(11), amountOfUnits(13)];
  return { stepKeys: ["fill"], says, usesAbout, low: 12.25, high: 14, counts: 8, odds: 0.99, ...changes };
}

export function stepEvidence(changes: Partial<StepEvidence> = {}): StepEvidence {
  const factor = { factor: 1.18, low: 1.1, high: 1.264, deviation: 0.05, parts: [] };
  const of = { recipeKey: "card", stepKeys: ["fill"], shares: [1], counts: 8, told: true, mixedUpWith: [] };
  return { ...factor, ...of, ...changes };
}

export function supplyEvidence(changes: Partial<SupplyEvidence> = {}): SupplyEvidence {
  const total = { factor: 1.08, low: 1.02, high: 1.14, deviation: 0.04, parts: [] };
  const evidence = { total, steps: [stepEvidence()], recipes: [], counts: 12 };
  const countDays = ["2026-03-02", "2026-03-09", "2026-03-16"].map(day);
  return { supply: SUPPLY, evidence, proposals: [proposal()], countDays, ...changes };
}

export function cardsEvidence(changes: Partial<CardEvidence> = {}): CardEvidence {
  return { supplies: [supplyEvidence()], steps: STEPS, answers: [], ...changes };
}
