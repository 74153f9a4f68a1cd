import { goesOut, inOrderPacked, type OutboxEntry } from "./outbox-entry";
import type { OutboxStore } from "./outbox-store";
import type { SendOutcome, TakeBackOutcome } from "./send-parcel";

/** A sending that nobody answered may still reach the program for so long: it can lie in a network on its way. */
const LATE_MS = 15_000;

/** What sending needs from outside. */
export type OutboxMeans = {
  readonly store: OutboxStore;
  readonly send: (form: OutboxEntry["form"]) => Promise<SendOutcome>;
  readonly takeBack: (id: string) => Promise<TakeBackOutcome>;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** Keys of the parcels that this tab is sending. */
  readonly onTheWay: Set<string>;
};

/** What came of sending one entry. */
export type EntryOutcome =
  | SendOutcome
  /** It is no longer kept, or another sending of this tab is under way: there was nothing to do. */
  | { readonly kind: "nothing-to-do" }
  /** It was withdrawn, and the program has been told; `wasRecorded` says whether the book held it. */
  | { readonly kind: "taken-back"; readonly wasRecorded: boolean };

/**
 * Sends one kept parcel, and lets go of it once the program has said that it is recorded. A tab that is killed
 * anywhere between sends it again later; the parcel's key makes that the same parcel.
 * @param means the store and the ways to the program
 * @param id key of the parcel
 * @returns what came of it
 */
export async function sendEntry(means: OutboxMeans, id: string): Promise<EntryOutcome> {
  if (means.onTheWay.has(id)) return { kind: "nothing-to-do" };
  means.onTheWay.add(id);
  try {
    return await sendMarked(means, id);
  } finally {
    means.onTheWay.delete(id);
  }
}

/**
 * Sends all that goes out by itself, oldest first. Where nobody answers it stops; a failure of the program at one
 * parcel does not hold up the others.
 * @param means the store and the ways to the program
 * @param onOutcome told of each entry and what came of it
 * @returns whether anything is left that has to be sent again
 */
export async function sendAll(
  means: OutboxMeans,
  onOutcome: (entry: OutboxEntry, outcome: EntryOutcome) => void,
): Promise<boolean> {
  let isLeft = false;
  for (const entry of inOrderPacked(await means.store.all()).filter(goesOut)) {
    const outcome = await sendEntry(means, entry.id);
    onOutcome(entry, outcome);
    if (outcome.kind !== "unreachable") continue;
    isLeft = true;
    if (outcome.why === "no-answer") break;
  }
  return isLeft;
}

/**
 * Takes a kept parcel back. What was never sent is let go of; what may have arrived is kept as withdrawn until the
 * program has been told.
 * @param store where it is kept
 * @param entry the parcel, as the packer saw it
 * @param now milliseconds since 1970
 * @returns whether the program must still be told
 */
export async function withdrawEntry(store: OutboxStore, entry: OutboxEntry, now: number): Promise<boolean> {
  let isKept = false;
  const left = await store.change(entry.id, (found) => {
    isKept = true;
    return mayBeRecorded(found) ? { ...found, state: { kind: "withdrawn" } } : null;
  });
  if (isKept) return left !== null;
  // It was recorded a moment ago, perhaps by another tab, and let go of.
  await store.keep({ ...entry, unansweredAt: now, state: { kind: "withdrawn" } });
  return true;
}

/** Of a conflict the book holds the other parcel, which is not this copy's to take back. */
function mayBeRecorded(entry: OutboxEntry): boolean {
  const isConflict = entry.state.kind === "refused" && entry.state.isConflict;
  return entry.unansweredAt !== null && !isConflict;
}

/** The mark comes first: whatever happens from here on, the book may hold the parcel. */
async function sendMarked(means: OutboxMeans, id: string): Promise<EntryOutcome> {
  const { store } = means;
  let before: number | null = null;
  const sent = await store.change(id, (entry) => {
    before = entry.unansweredAt;
    return entry.state.kind === "waiting" ? { ...entry, unansweredAt: means.now() } : entry;
  });
  if (sent === null || !goesOut(sent)) return { kind: "nothing-to-do" };
  if (sent.state.kind === "withdrawn") return takeBackSent(means, sent);
  const outcome = await means.send(sent.form);
  if (outcome.kind === "unreachable") return outcome;
  await store.change(id, (entry) => settled(entry, outcome, before));
  return outcome;
}

/** The entry after an answer. One that was withdrawn meanwhile stays, so that the program is told. */
function settled(
  entry: OutboxEntry,
  outcome: Exclude<SendOutcome, { kind: "unreachable" }>,
  before: number | null,
): OutboxEntry | null {
  if (entry.state.kind === "withdrawn") return entry;
  switch (outcome.kind) {
    case "recorded":
      return null;
    case "refused":
      return {
        ...entry,
        unansweredAt: before,
        state: { kind: "refused", problems: outcome.problems, isConflict: outcome.isConflict },
      };
    case "ask-count-order":
      return {
        ...entry,
        unansweredAt: before,
        state: { kind: "ask-count-order", supplies: outcome.supplies },
      };
  }
  return outcome satisfies never;
}

async function takeBackSent(means: OutboxMeans, entry: OutboxEntry): Promise<EntryOutcome> {
  const outcome = await means.takeBack(entry.id);
  if (outcome.kind === "unreachable") return outcome;
  const isLate = means.now() - (entry.unansweredAt ?? 0) < LATE_MS;
  if (outcome.kind === "not-there" && isLate) return { kind: "unreachable", why: "failed" };
  await means.store.change(entry.id, () => null);
  return { kind: "taken-back", wasRecorded: outcome.kind === "taken-back" };
}
