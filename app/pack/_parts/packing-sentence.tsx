"use client";

import { Button } from "../../_parts/button";
import { Sentence } from "../../_parts/sentence";
import { type Choice, SentenceChoice } from "../../_parts/sentence-choice";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { DraftPiece, PackingDraft } from "../packing-draft";
import { countWord, STYLE_WORDS } from "../parcel-words";
import { CartonChoices } from "./carton-choices";
import styles from "./pack.module.css";

const MOST_PIECES = 24;
const NOWHERE = "";

type PackingSentenceProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** The parcel as one sentence; its underlined words are the choices. */
export function PackingSentence({ draft, choices, onChange }: PackingSentenceProps) {
  const zones: Choice[] = [
    { value: NOWHERE, words: "any zone" },
    ...choices.zones.map((zone) => ({ value: zone.id, words: inSentence(zone.name) })),
  ];
  const styleChoices = (["paper", "bubble", "mixed"] as const).map((value) => ({
    value,
    words: STYLE_WORDS[value],
  }));
  return (
    <>
      <Sentence>
        Packing{" "}
        {draft.pieces.map((piece, index) => (
          <PieceChoice key={piece.itemTypeId} piece={piece} index={index} {...{ draft, choices, onChange }} />
        ))}
        on{" "}
        <SentenceChoice
          label="cushion style"
          choices={styleChoices}
          value={draft.style}
          onChange={(value) => onChange({ kind: "style", style: styleOf(value) })}
        />{" "}
        into a <CartonChoices draft={draft} choices={choices} onChange={onChange} /> for{" "}
        <SentenceChoice
          label="zone"
          choices={zones}
          value={draft.zoneId ?? NOWHERE}
          onChange={(value) => onChange({ kind: "zone", zoneId: value === NOWHERE ? null : value })}
        />
        .
      </Sentence>
      <MixedParcel draft={draft} choices={choices} onChange={onChange} />
    </>
  );
}

type PieceChoiceProps = PackingSentenceProps & { readonly piece: DraftPiece; readonly index: number };

function PieceChoice({ piece, index, draft, choices, onChange }: PieceChoiceProps) {
  const most = Math.max(MOST_PIECES, piece.pieces);
  const counts = Array.from({ length: most }, (_, less) => ({
    value: String(less + 1),
    words: countWord(less + 1),
  }));
  const taken = draft.pieces.map((other) => other.itemTypeId).filter((id) => id !== piece.itemTypeId);
  const types = choices.itemTypes
    .filter((type) => !taken.includes(type.id))
    .map((type) => ({ value: type.id, words: inSentence(type.name) }));
  return (
    <>
      {index === 0 ? "" : "and "}
      <SentenceChoice
        label="pieces"
        choices={counts}
        value={String(piece.pieces)}
        onChange={(value) => onChange({ kind: "pieces", index, pieces: Number(value) })}
      />{" "}
      <SentenceChoice
        label="item type"
        choices={types}
        value={piece.itemTypeId}
        onChange={(itemTypeId) => onChange({ kind: "item-type", index, itemTypeId })}
      />{" "}
    </>
  );
}

/** Puts another item type into the same box, or takes it out. */
function MixedParcel({ draft, choices, onChange }: PackingSentenceProps) {
  const taken = draft.pieces.map((piece) => piece.itemTypeId);
  const free = choices.itemTypes.filter((type) => !taken.includes(type.id));
  const last = draft.pieces.at(-1);
  const lastName = choices.itemTypes.find((type) => type.id === last?.itemTypeId)?.name ?? "";
  return (
    <p className={styles.mixed}>
      {free.length === 0 ? null : (
        <select
          className={styles.quietSelect}
          aria-label="Another item type into the same box"
          value=""
          onChange={(event) => onChange({ kind: "add-item-type", itemTypeId: event.target.value })}
        >
          <option value="" disabled>
            + another type in the same box
          </option>
          {free.map((type) => (
            <option key={type.id} value={type.id}>
              {type.name}
            </option>
          ))}
        </select>
      )}
      {draft.pieces.length < 2 ? null : (
        <Button
          tone="plain"
          onPress={() => onChange({ kind: "remove-item-type", index: draft.pieces.length - 1 })}
        >
          Take the {inSentence(lastName)} out
        </Button>
      )}
    </p>
  );
}

function styleOf(value: string): PackingDraft["style"] {
  if (value === "paper" || value === "bubble") return value;
  return "mixed";
}

/** A name in the middle of a sentence starts small, unless it is written in capitals. */
function inSentence(name: string): string {
  const second = name.charAt(1);
  if (second !== second.toLowerCase()) return name;
  return name.charAt(0).toLowerCase() + name.slice(1);
}
