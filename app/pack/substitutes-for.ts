import { USUAL_HABITS } from "#lib/packing/habits";
import { naturalAmount } from "#lib/packing/natural-amount";
import { COMMON_SUBSTITUTIONS } from "#lib/packing/substitution/common-substitutions";
import { jobOfMaterial } from "#lib/packing/substitution/job-of-material";
import { standIns } from "#lib/packing/substitution/stand-ins";
import { type Amount, amount, amountOfUnits, unitsOf } from "#lib/units/amount";
import type { PackingChoices, SupplyChoice } from "./packing-choices";
import type { CardLine } from "./packing-draft";
import { addedMassWords, standInWords } from "./stand-in-words";

/** Something to reach for instead, how much of it, and what to mind; empty words where nothing is known of it. */
export type SubstituteChoice = {
  readonly supplyId: string;
  readonly name: string;
  readonly unit: SupplyChoice["unit"];
  readonly amount: Amount;
  readonly words: string;
};

const MOST_SUBSTITUTES = 4;

/**
 * What may be reached for when the supply of a line has run out: the shop's own rules first, then what is common in the
 * trade and on the shelf, then what is at least of the same kind.
 *
 * @param line the line of the card
 * @param choices what the shop has
 * @returns at most four; never cartons, never the supply itself
 */
export function substitutesFor(line: CardLine, choices: PackingChoices): readonly SubstituteChoice[] {
  const supply = choices.supplies.find(({ id }) => id === line.supplyId);
  if (supply === undefined) return [];
  const all = [
    ...ownRules(line, supply, choices),
    ...common(line, supply, choices),
    ...alike(line, supply, choices),
  ];
  return all
    .filter((each, at) => all.findIndex(({ supplyId }) => supplyId === each.supplyId) === at)
    .slice(0, MOST_SUBSTITUTES);
}

function ownRules(line: CardLine, supply: SupplyChoice, choices: PackingChoices): SubstituteChoice[] {
  return choices.substitutes.flatMap((rule) => {
    const standIn = choices.supplies.find(({ id }) => id === rule.standInId);
    if (rule.supplyId !== line.supplyId || standIn === undefined) return [];
    const exact = amount(Math.round((line.amount * rule.amount) / rule.insteadOf));
    const taken = naturalAmount(exact, standIn.unit);
    const added = addedMass(supply, line.amount, standIn, taken);
    const words = [added, rule.note].filter((each) => each !== null && each !== "").join("; ");
    return [{ supplyId: standIn.id, name: standIn.name, unit: standIn.unit, amount: taken, words }];
  });
}

function addedMass(supply: SupplyChoice, used: Amount, standIn: SupplyChoice, taken: Amount): string {
  if (supply.massMg === null || standIn.massMg === null) return "";
  return addedMassWords(unitsOf(taken) * standIn.massMg - unitsOf(used) * supply.massMg);
}

function common(line: CardLine, supply: SupplyChoice, choices: PackingChoices): SubstituteChoice[] {
  if (supply.draft === null || line.amount === 0) return [];
  const shelf = choices.supplies.flatMap(({ draft, onHand }) =>
    draft === null ? [] : [{ ...draft, onHand }],
  );
  const step = choices.recipes.flatMap(({ steps }) => steps).find(({ id }) => id === line.recipeStepId);
  const job = jobOfMaterial(supply.draft.material, step?.per ?? "piece");
  const missing = { job, missing: supply.draft, amount: line.amount };
  return standIns(missing, shelf, COMMON_SUBSTITUTIONS, USUAL_HABITS).flatMap((standIn) => {
    const found = choices.supplies.find(({ id }) => id === standIn.supplyId);
    if (found === undefined) return [];
    return [
      {
        supplyId: found.id,
        name: found.name,
        unit: found.unit,
        amount: standIn.amount,
        words: standInWords(standIn),
      },
    ];
  });
}

/** Of the same kind and unit as much, of others one: the packer sets it. Tape closes and wadding fills. */
function alike(line: CardLine, supply: SupplyChoice, choices: PackingChoices): SubstituteChoice[] {
  return choices.supplies
    .filter(
      ({ id, kind }) =>
        id !== supply.id && kind !== "carton" && (kind === "tape") === (supply.kind === "tape"),
    )
    .sort((one, other) => rank(one, supply) - rank(other, supply))
    .map(({ id, name, unit }) => ({
      supplyId: id,
      name,
      unit,
      amount: unit === supply.unit && line.amount > 0 ? line.amount : amountOfUnits(1),
      words: "",
    }));
}

function rank(other: SupplyChoice, supply: SupplyChoice): number {
  const kind = other.kind === supply.kind ? 0 : 4;
  const unit = other.unit === supply.unit ? 0 : 2;
  const shelf = other.onHand !== null && other.onHand > 0 ? 0 : 1;
  return kind + unit + shelf;
}
