"use client";

import { type Choice, SentenceChoice } from "../../_parts/sentence-choice";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";

const ODD = "odd carton";
const NONE = "";

type CartonChoicesProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** The carton of the sentence; a double box names the inner one first. */
export function CartonChoices({ draft, choices, onChange }: CartonChoicesProps) {
  const list: Choice[] = [
    ...(draft.cartons.length === 0 ? [{ value: NONE, words: "carton to choose" }] : []),
    ...cartonsInOrder(draft, choices),
    { value: ODD, words: "saved odd carton" },
  ];
  const choice = (index: number, label: string) => (
    <SentenceChoice
      label={label}
      choices={list}
      value={choiceValue(draft.cartons[index])}
      onChange={(value) => onChange({ kind: "carton", index, supplyId: value === ODD ? null : value })}
    />
  );
  if (draft.cartons.length < 2) return choice(0, "carton");
  return (
    <>
      {choice(1, "inner carton")} inside a {choice(0, "outer carton")}
    </>
  );
}

function choiceValue(carton: PackingDraft["cartons"][number] | undefined): string {
  if (carton === undefined) return NONE;
  return carton.supplyId ?? ODD;
}

/** Cartons that the recipes of these item types name come first, then the others in the shop's order. */
function cartonsInOrder(draft: PackingDraft, choices: PackingChoices): readonly Choice[] {
  const types = draft.pieces.map((piece) => piece.itemTypeId);
  const named = new Set(
    choices.recipes
      .filter((recipe) => types.includes(recipe.itemTypeId))
      .flatMap((recipe) => recipe.cartons.map((carton) => carton.supplyId)),
  );
  const cartons = choices.supplies.filter((supply) => supply.kind === "carton");
  const ordered = [
    ...cartons.filter((carton) => named.has(carton.id)),
    ...cartons.filter((carton) => !named.has(carton.id)),
  ];
  return ordered.map((carton) => ({ value: carton.id, words: carton.sizes ?? carton.name }));
}
