import type { ParcelFormInput } from "../parcels/parcel-form";
import type { ParcelProblem } from "../parcels/parcel-problem";

/** A parcel as it leaves the bench: what is sent, and what it is called. */
export type PackedParcel = { readonly form: ParcelFormInput; readonly words: string };

/** What is still to happen with a kept parcel. */
export type EntryState =
  | { readonly kind: "waiting" }
  | {
      readonly kind: "refused";
      readonly problems: readonly ParcelProblem[];
      /** The book holds a parcel under this key, but with other content. */
      readonly isConflict: boolean;
    }
  | { readonly kind: "ask-count-order"; readonly supplies: readonly string[] }
  /** The packer took it back after a sending that nobody answered: the book may hold it, and must be told. */
  | { readonly kind: "withdrawn" };

/** A parcel kept on this device, under its own key, until the program has said that it is recorded. */
export type OutboxEntry = PackedParcel & {
  /** The parcel's own key. */
  readonly id: string;
  /** When it was packed, in milliseconds since 1970. */
  readonly keptAt: number;
  /** The last sending that nobody answered, in milliseconds since 1970; null: the book can't hold it. */
  readonly unansweredAt: number | null;
  readonly state: EntryState;
};

/**
 * The entry of a parcel that just left the bench.
 * @param parcel what is sent, and its words
 * @param now milliseconds since 1970
 * @returns an entry that waits and was never sent
 */
export function newEntry(parcel: PackedParcel, now: number): OutboxEntry {
  return { ...parcel, id: parcel.form.id, keptAt: now, unansweredAt: null, state: { kind: "waiting" } };
}

/**
 * The same parcel kept once more, mended: it keeps its place in the row and what is known of its sendings.
 * @param entry as it is to be kept
 * @param before as it was kept under the same key, or undefined
 * @returns the entry to keep
 */
export function keptAgain(entry: OutboxEntry, before: OutboxEntry | undefined): OutboxEntry {
  return before === undefined
    ? entry
    : { ...entry, keptAt: before.keptAt, unansweredAt: before.unansweredAt };
}

/**
 * Entries in the order in which they were packed; those of one moment by their keys.
 * @param entries in any order
 * @returns the same entries, oldest first
 */
export function inOrderPacked(entries: readonly OutboxEntry[]): readonly OutboxEntry[] {
  return [...entries].sort(
    (one, other) => one.keptAt - other.keptAt || (one.id < other.id ? -1 : Number(one.id > other.id)),
  );
}

/**
 * Whether an entry goes out by itself. One that was refused or asked about waits for the packer.
 * @param entry a kept parcel
 */
export function goesOut(entry: OutboxEntry): boolean {
  return entry.state.kind === "waiting" || entry.state.kind === "withdrawn";
}
