"use client";

import { useId } from "react";
import { classList } from "../../_parts/class-list";
import field from "../../_parts/field.module.css";
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
  const id = useId();
  if (steps.length === 0 && draft.promised === "") return null;
  const known = steps.some(({ label }) => label === draft.promised);
  return (
    <div className={classList(field.field, field.short)}>
      <label htmlFor={id} className={field.label}>
        Promised
      </label>
      <select
        id={id}
        className={field.input}
        value={draft.promised}
        aria-describedby={`${id}-hint`}
        onChange={(event) => onChange({ kind: "text", part: "promised", text: event.target.value })}
      >
        <option value="">nothing said</option>
        {known || draft.promised === "" ? null : (
          <option value={draft.promised}>up to {draft.promised}</option>
        )}
        {steps.map(({ label }) => (
          <option key={label} value={label}>
            up to {label}
            {oddsOf(label, outlook)}
          </option>
        ))}
      </select>
      <span id={`${id}-hint`} className={field.hint}>
        {hintWords(outlook)}
      </span>
    </div>
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
