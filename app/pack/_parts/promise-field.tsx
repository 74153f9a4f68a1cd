"use client";

import { ChoiceField } from "../../_parts/choice-field";
import type { DraftChange } from "../draft-change";
import { oddsWords } from "../odds-words";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import type { WeightOutlook } from "../weight-outlook";

type PromiseFieldProps = {
  readonly draft: PackingDraft;
  readonly outlook: WeightOutlook | null;
  readonly steps: PackingChoices["steps"];
  readonly onChange: (change: DraftChange) => void;
};

/** The band that was promised at listing, each step with its odds; without a rate card there is nothing to promise. */
export function PromiseField({ draft, outlook, steps, onChange }: PromiseFieldProps) {
  if (steps.length === 0 && draft.promised === "") return null;
  const isKnown = draft.promised === "" || steps.some(({ label }) => label === draft.promised);
  return (
    <ChoiceField
      label="Promised"
      size="short"
      value={draft.promised}
      hint={hintWords(outlook)}
      onChange={(text) => onChange({ kind: "text", part: "promised", text })}
      choices={[
        { value: "", words: "nothing said" },
        ...(isKnown ? [] : [{ value: draft.promised, words: `up to ${draft.promised}` }]),
        ...steps.map(({ label }) => ({ value: label, words: `up to ${label}${oddsOf(label, outlook)}` })),
      ]}
    />
  );
}

function oddsOf(label: string, outlook: WeightOutlook | null): string {
  const step = outlook?.steps.find((each) => each.label === label);
  return step === undefined ? "" : `: ${oddsWords(step.odds)}`;
}

function hintWords(outlook: WeightOutlook | null): string {
  if (outlook === null) return "the band of the listing";
  if (outlook.promise === null) return "no step is sure enough";
  return `safe: up to ${outlook.promise.label}`;
}
