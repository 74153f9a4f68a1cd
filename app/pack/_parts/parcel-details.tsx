"use client";

import { Checkbox } from "react-aria-components";
import { day, isDay } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { parseMoney } from "#lib/units/money";
import { classList } from "../../_parts/class-list";
import { Field } from "../../_parts/field";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import { CutHeight } from "./carton-details";
import styles from "./pack.module.css";

type ParcelDetailsProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  readonly isNew: boolean;
  readonly onChange: (change: DraftChange) => void;
};

/** What is seldom asked: another day, postage, posted, a double box, an unusual parcel, a note. */
export function ParcelDetails({ draft, choices, isNew, onChange }: ParcelDetailsProps) {
  const isBackdated = draft.packedOn !== choices.today;
  const unread =
    draft.postage.trim() !== "" && parseMoney(draft.postage, choices.minorDigits).kind === "unreadable";
  return (
    <details className={styles.details} open={!isNew}>
      <summary>
        Packed {isBackdated ? formatDay(draft.packedOn, { weekday: true }) : "today"}
        {draft.unusual ? ", unusual" : ""}
        {draft.posted ? ", posted" : ""}
        <span className={styles.change}> day, postage, double box, note…</span>
      </summary>
      <div className={styles.fields}>
        <Field
          label="Day packed"
          type="date"
          size="short"
          value={draft.packedOn}
          hint={isBackdated ? "Stays chosen for the next parcels." : undefined}
          onChange={(text) => {
            if (isDay(text)) onChange({ kind: "day", packedOn: day(text) });
          }}
        />
        <Field
          label={`Postage paid, ${choices.currency}`}
          size="short"
          inputMode="decimal"
          value={draft.postage}
          onChange={(text) => onChange({ kind: "text", part: "postage", text })}
          {...(unread ? { error: `“${draft.postage}” can't be read. Type it like 9.80.` } : {})}
        />
        <CutHeight draft={draft} choices={choices} onChange={onChange} />
      </div>
      <Tick isOn={draft.posted} onChange={(on) => onChange({ kind: "tick", part: "posted", on })}>
        Posted{isBackdated ? " that day" : ""}
      </Tick>
      <Tick isOn={draft.cartons.length > 1} onChange={(on) => onChange({ kind: "double-box", on })}>
        Double box: one carton inside another
      </Tick>
      <Tick isOn={draft.unusual} onChange={(on) => onChange({ kind: "tick", part: "unusual", on })}>
        Unusual: keep out of averages
      </Tick>
      <Field
        label="Note"
        size="rows"
        value={draft.note}
        hint="No names or addresses of buyers."
        onChange={(text) => onChange({ kind: "text", part: "note", text })}
      />
    </details>
  );
}

type TickProps = {
  readonly isOn: boolean;
  readonly onChange: (on: boolean) => void;
  readonly children: React.ReactNode;
};

function Tick({ isOn, onChange, children }: TickProps) {
  return (
    <Checkbox className={classList(styles.tick)} isSelected={isOn} onChange={onChange}>
      <span className={styles.box} aria-hidden="true">
        {isOn ? "✓" : ""}
      </span>
      {children}
    </Checkbox>
  );
}
