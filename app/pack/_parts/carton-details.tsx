"use client";

import { parseLength, parseSizes } from "#lib/units/length";
import { Field } from "../../_parts/field";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import styles from "./pack.module.css";

type CartonDetailsProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

const SIZES_OF_A_BOX = 3;

/** Sizes of a saved odd carton, and what the recipe has to say about the carton. */
export function CartonDetails({ draft, choices, onChange }: CartonDetailsProps) {
  const names = draft.withoutRecipe.map((id) => choices.itemTypes.find((type) => type.id === id)?.name ?? id);
  return (
    <>
      {draft.overfull ? (
        <p className={styles.notice}>
          That is more than the recipe's largest carton takes. Choose a carton, or two boxes.
        </p>
      ) : null}
      {names.length === 0 ? null : (
        <p className={styles.notice}>
          No recipe for {names.join(" and ")} yet: add what you use to the card, and write the recipe later.
        </p>
      )}
      {draft.cartons.map((carton, index) =>
        carton.supplyId === null ? (
          <Field
            // biome-ignore lint/suspicious/noArrayIndexKey: a carton is known by its place from the outside in
            key={index}
            label={draft.cartons.length > 1 ? oddLabel(index) : "Inside sizes of the odd carton"}
            size="short"
            value={carton.sizes}
            hint={choices.measures === "imperial" ? "12 x 9 x 8, in inches" : "30 x 23 x 20, in cm"}
            onChange={(text) => onChange({ kind: "carton-text", index, part: "sizes", text })}
            {...sizesProblem(carton.sizes, choices)}
          />
        ) : null,
      )}
    </>
  );
}

/** The height to which the outer carton was cut down. */
export function CutHeight({ draft, choices, onChange }: CartonDetailsProps) {
  const outer = draft.cartons[0];
  if (outer === undefined) return null;
  const unread = outer.cut.trim() !== "" && parseLength(outer.cut, choices.measures).kind === "unreadable";
  return (
    <Field
      label="Carton cut down to a height of"
      size="short"
      value={outer.cut}
      hint={
        choices.measures === "imperial" ? "6, in inches; empty if not cut" : "15, in cm; empty if not cut"
      }
      onChange={(text) => onChange({ kind: "carton-text", index: 0, part: "cut", text })}
      {...(unread ? { error: `“${outer.cut}” can't be read as a height.` } : {})}
    />
  );
}

function oddLabel(index: number): string {
  return index === 0 ? "Inside sizes of the outer odd carton" : "Inside sizes of the inner odd carton";
}

function sizesProblem(text: string, choices: PackingChoices): { error?: string } {
  if (text.trim() === "") return {};
  const sizes = parseSizes(text, choices.measures);
  if (sizes.kind === "sizes" && sizes.um.length === SIZES_OF_A_BOX) return {};
  return { error: `“${text}” can't be read as three sizes.` };
}
