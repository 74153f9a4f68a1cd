"use client";

import { parseMass } from "#lib/units/mass";
import { ChoiceField } from "../../../_parts/choice-field";
import { Field } from "../../../_parts/field";
import type { PackingChoices } from "../../packing-choices";
import type { PackingDraft } from "../../packing-draft";
import { piecesProblem, type SeveralRow } from "../several-rows";
import styles from "./several.module.css";

type SeveralRowFieldsProps = {
  readonly row: SeveralRow;
  readonly number: number;
  readonly choices: PackingChoices;
  /** The parcel that the row stands for; null while it is empty. */
  readonly draft: PackingDraft | null;
  readonly onChange: (part: Partial<SeveralRow>) => void;
};

/** One parcel: what, how many, in which carton, what the scale said. */
export function SeveralRowFields({ row, number, choices, draft, onChange }: SeveralRowFieldsProps) {
  const cartons = choices.supplies.filter(({ kind }) => kind === "carton");
  const likely = cartons.find(({ id }) => id === draft?.cartons[0]?.supplyId);
  const problem = piecesProblem(row.pieces);
  const isUnread = row.scale.trim() !== "" && parseMass(row.scale, choices.measures).kind === "unreadable";
  return (
    <li className={styles.row} aria-label={`Parcel ${number}`}>
      <ChoiceField
        label="What"
        size="short"
        value={row.itemTypeId}
        choices={[{ value: "", words: "no parcel" }, ...choices.itemTypes.map(named)]}
        onChange={(itemTypeId) => onChange({ itemTypeId })}
      />
      <Field
        label="Pieces"
        size="short"
        inputMode="numeric"
        value={row.pieces}
        placeholder={String(draft?.pieces[0]?.pieces ?? 1)}
        onChange={(pieces) => onChange({ pieces })}
        {...(problem === null ? {} : { error: problem })}
      />
      <ChoiceField
        label="Carton"
        size="short"
        value={row.cartonId}
        choices={[{ value: "", words: likely?.name ?? "by the card" }, ...cartons.map(named)]}
        onChange={(cartonId) => onChange({ cartonId })}
      />
      <Field
        label="Scale said"
        size="short"
        value={row.scale}
        onChange={(scale) => onChange({ scale })}
        {...(isUnread ? { error: "Type it like 2 lb 15 oz or 1.3 kg, or leave it empty." } : {})}
      />
      <Field
        label="Order reference"
        size="short"
        value={row.orders}
        onChange={(orders) => onChange({ orders })}
      />
    </li>
  );
}

function named({ id, name }: { readonly id: string; readonly name: string }) {
  return { value: id, words: name };
}
