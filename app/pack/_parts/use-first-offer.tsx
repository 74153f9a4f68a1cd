"use client";

import { Button } from "../../_parts/button";
import type { DraftChange } from "../draft-change";
import type { PackingChoices } from "../packing-choices";
import type { PackingDraft } from "../packing-draft";
import styles from "./pack.module.css";

type UseFirstOfferProps = {
  readonly draft: PackingDraft;
  readonly choices: PackingChoices;
  readonly onChange: (change: DraftChange) => void;
};

/** A carton that the seller wants used up and that takes this parcel too, in one press. */
export function UseFirstOffer({ draft, choices, onChange }: UseFirstOfferProps) {
  const [piece, ...others] = draft.pieces;
  if (piece === undefined || others.length > 0 || draft.cartons.length > 1) return null;
  const chosen = draft.cartons[0]?.supplyId;
  const offers = choices.useFirst.filter(({ pieces }) => (pieces[piece.itemTypeId] ?? 0) >= piece.pieces);
  if (offers.some(({ cartonId }) => cartonId === chosen)) return null;
  const carton = choices.supplies.find(({ id }) => offers.some(({ cartonId }) => cartonId === id));
  if (carton === undefined) return null;
  return (
    <p className={styles.useFirst}>
      To use up first: {carton.name} takes it too. The fill may differ: count what you take.{" "}
      <Button onPress={() => onChange({ kind: "carton", index: 0, supplyId: carton.id })}>
        Take {carton.sizes ?? carton.name}
      </Button>
    </p>
  );
}
