import type { Day } from "#lib/units/day";
import { filledCard } from "../filled-card";
import type { PackingChoices } from "../packing-choices";
import { draftFor, type PackingDraft } from "../packing-draft";

/** One parcel of several: what is asked of it; the rest is filled in by what is likely. */
export type SeveralRow = {
  /** Key of the parcel to come. */
  readonly id: string;
  /** Empty: no parcel in this row. */
  readonly itemTypeId: string;
  readonly pieces: string;
  /** Empty: by the card, or as last time. */
  readonly cartonId: string;
  readonly scale: string;
  readonly orders: string;
};

export const ROWS_AT_FIRST = 6;
const MOST_PIECES = 999;

/**
 * An empty row.
 *
 * @param id key of the parcel to come
 */
export function emptyRow(id: string): SeveralRow {
  return { id, itemTypeId: "", pieces: "", cartonId: "", scale: "", orders: "" };
}

/**
 * The parcel that a row stands for, packed by its card.
 *
 * @param row what was filled in
 * @param choices what the shop has
 * @param packedOn the day of all rows
 * @returns the draft; null for an empty row
 */
export function draftOfRow(row: SeveralRow, choices: PackingChoices, packedOn: Day): PackingDraft | null {
  if (row.itemTypeId === "") return null;
  const likely = draftFor(choices, row.itemTypeId, row.id, packedOn);
  const pieces = piecesOf(row.pieces) ?? likely.pieces[0]?.pieces ?? 1;
  const isAsLikely = pieces === likely.pieces[0]?.pieces;
  const filled = isAsLikely
    ? likely
    : filledCard({ ...likely, pieces: [{ itemTypeId: row.itemTypeId, pieces }] }, choices);
  const cartons = row.cartonId === "" ? filled.cartons : [{ supplyId: row.cartonId, sizes: "", cut: "" }];
  return { ...filled, cartons, scale: row.scale, orders: row.orders };
}

/**
 * What is wrong with a row's pieces.
 *
 * @param text as typed
 * @returns words with the way out, or null
 */
export function piecesProblem(text: string): string | null {
  return text.trim() === "" || piecesOf(text) !== null
    ? null
    : `“${text.trim()}” can't be read. Type a whole number like 2.`;
}

function piecesOf(text: string): number | null {
  const trimmed = text.trim();
  if (!/^\d{1,3}$/.test(trimmed)) return null;
  const pieces = Number(trimmed);
  return pieces >= 1 && pieces <= MOST_PIECES ? pieces : null;
}
