import type { CushionStyle } from "#lib/packing/recipe-version";
import type { Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import { shownUnit } from "./card-line";
import { filledCard } from "./filled-card";
import type { PackingChoices } from "./packing-choices";
import { type CardLine, type DraftCarton, draftFor, type PackingDraft } from "./packing-draft";

/** What is typed as it is. */
type DraftText = "scale" | "promised" | "postage" | "orders" | "note";

export type DraftChange =
  | { readonly kind: "start-with"; readonly itemTypeId: string; readonly id: string }
  | { readonly kind: "next-parcel"; readonly id: string }
  | { readonly kind: "open"; readonly draft: PackingDraft }
  | { readonly kind: "new-day"; readonly packedOn: Day }
  | { readonly kind: "pieces"; readonly index: number; readonly pieces: number }
  | { readonly kind: "item-type"; readonly index: number; readonly itemTypeId: string }
  | { readonly kind: "add-item-type"; readonly itemTypeId: string }
  | { readonly kind: "remove-item-type"; readonly index: number }
  | { readonly kind: "style"; readonly style: CushionStyle }
  | { readonly kind: "zone"; readonly zoneId: string | null }
  | { readonly kind: "day"; readonly packedOn: Day }
  | { readonly kind: "carton"; readonly index: number; readonly supplyId: string | null }
  | {
      readonly kind: "carton-text";
      readonly index: number;
      readonly part: "sizes" | "cut";
      readonly text: string;
    }
  | { readonly kind: "double-box"; readonly on: boolean }
  | { readonly kind: "line-amount"; readonly key: string; readonly amount: Amount }
  | { readonly kind: "substitute"; readonly key: string; readonly supplyId: string; readonly amount: Amount }
  | { readonly kind: "remove-line"; readonly key: string }
  | { readonly kind: "add-line"; readonly supplyId: string; readonly key: string }
  | { readonly kind: "text"; readonly part: DraftText; readonly text: string }
  | { readonly kind: "tick"; readonly part: "posted" | "unusual"; readonly on: boolean };

/**
 * The draft after one change. Changing what is packed, the style or the day fills the card anew from the recipe.
 * @param draft the parcel on the bench
 * @param change what the packer did
 * @param choices what the shop has
 * @returns the new draft; the given one is left as it was
 */
export function changedDraft(
  draft: PackingDraft,
  change: DraftChange,
  choices: PackingChoices,
): PackingDraft {
  switch (change.kind) {
    case "start-with":
      return draftFor(choices, change.itemTypeId, change.id, draft.packedOn);
    case "next-parcel":
      return draftFor(choices, draft.pieces[0]?.itemTypeId ?? null, change.id, draft.packedOn);
    case "open":
      return change.draft;
    case "new-day":
      // Midnight came while the parcel was packed: what lies on the bench stays as it is.
      return { ...draft, packedOn: change.packedOn };
    case "pieces":
      return filledCard(
        { ...draft, pieces: replaced(draft.pieces, change.index, { pieces: change.pieces }) },
        choices,
      );
    case "item-type":
      return filledCard(
        { ...draft, pieces: replaced(draft.pieces, change.index, { itemTypeId: change.itemTypeId }) },
        choices,
      );
    case "add-item-type":
      return filledCard(
        { ...draft, pieces: [...draft.pieces, { itemTypeId: change.itemTypeId, pieces: 1 }] },
        choices,
      );
    case "remove-item-type":
      return filledCard(
        { ...draft, pieces: draft.pieces.filter((_, index) => index !== change.index) },
        choices,
      );
    case "style":
      return filledCard({ ...draft, style: change.style }, choices);
    case "day":
      return filledCard({ ...draft, packedOn: change.packedOn }, choices);
    case "zone":
      return { ...draft, zoneId: change.zoneId };
    case "carton":
      return {
        ...draft,
        cartons: cartonsWith(draft.cartons, change.index, { supplyId: change.supplyId, sizes: "", cut: "" }),
      };
    case "carton-text":
      return { ...draft, cartons: replaced(draft.cartons, change.index, { [change.part]: change.text }) };
    case "double-box":
      return { ...draft, cartons: doubled(draft.cartons, change.on) };
    case "line-amount":
      return { ...draft, lines: lineChanged(draft.lines, change.key, { amount: change.amount }) };
    case "substitute":
      return { ...draft, lines: lineChanged(draft.lines, change.key, substituteOf(change, choices)) };
    case "remove-line":
      return { ...draft, lines: draft.lines.filter((line) => line.key !== change.key) };
    case "add-line":
      return { ...draft, lines: [...draft.lines, ...addedLine(change, choices)] };
    case "text":
      return { ...draft, [change.part]: change.text };
    case "tick":
      return { ...draft, [change.part]: change.on };
  }
  return change satisfies never;
}

function replaced<T>(list: readonly T[], index: number, part: Partial<T>): readonly T[] {
  return list.map((entry, position) => (position === index ? { ...entry, ...part } : entry));
}

function lineChanged(lines: readonly CardLine[], key: string, part: Partial<CardLine>): readonly CardLine[] {
  return lines.map((line) => (line.key === key ? { ...line, ...part } : line));
}

function cartonsWith(
  cartons: readonly DraftCarton[],
  index: number,
  carton: DraftCarton,
): readonly DraftCarton[] {
  return index < cartons.length ? replaced(cartons, index, carton) : [...cartons, carton];
}

function doubled(cartons: readonly DraftCarton[], on: boolean): readonly DraftCarton[] {
  const [outer, inner] = cartons;
  if (outer === undefined) return cartons;
  return on ? [outer, inner ?? outer] : [outer];
}

/** What is used instead, in its own unit. */
function substituteOf(
  change: { readonly supplyId: string; readonly amount: Amount },
  choices: PackingChoices,
): Partial<CardLine> {
  const after = choices.supplies.find((supply) => supply.id === change.supplyId);
  if (after === undefined) return {};
  return { supplyId: after.id, amount: change.amount, ...shownUnit(after, null, choices.measures) };
}

function addedLine(
  change: { readonly supplyId: string; readonly key: string },
  choices: PackingChoices,
): readonly CardLine[] {
  const supply = choices.supplies.find((candidate) => candidate.id === change.supplyId);
  if (supply === undefined) return [];
  const shown = shownUnit(supply, null, choices.measures);
  return [
    {
      key: change.key,
      supplyId: supply.id,
      amount: shown.oneShown,
      ...shown,
      words: null,
      recipeStepId: null,
    },
  ];
}
