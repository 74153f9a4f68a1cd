"use client";

import { useId } from "react";
import { parseMass } from "#lib/units/mass";
import { classList } from "../../../_parts/class-list";
import { Field } from "../../../_parts/field";
import field from "../../../_parts/field.module.css";
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
      <Select
        label="What"
        value={row.itemTypeId}
        choices={[{ id: "", name: "no parcel" }, ...choices.itemTypes]}
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
      <Select
        label="Carton"
        value={row.cartonId}
        choices={[{ id: "", name: likely === undefined ? "by the card" : likely.name }, ...cartons]}
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

type SelectProps = {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly { readonly id: string; readonly name: string }[];
  readonly onChange: (id: string) => void;
};

function Select({ label, value, choices, onChange }: SelectProps) {
  const id = useId();
  return (
    <div className={classList(field.field, field.short)}>
      <label htmlFor={id} className={field.label}>
        {label}
      </label>
      <select
        id={id}
        className={field.input}
        value={value}
        onChange={(event) => onChange(event.target.value)}
      >
        {choices.map((choice) => (
          <option key={choice.id} value={choice.id}>
            {choice.name}
          </option>
        ))}
      </select>
    </div>
  );
}
