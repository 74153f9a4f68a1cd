import { newEntry, type PackedParcel } from "./outbox-entry";
import type { OutboxStore } from "./outbox-store";

/** Where parcels were kept before the outbox: all of them as one text. */
const OLD_KEY = "wadding-unsent-parcels";

/** A place that keeps text by name, such as the browser's local storage. */
export type TextStore = Pick<Storage, "getItem" | "removeItem">;

/**
 * Takes parcels over that an earlier version kept on this device. They are let go of there only once they are kept
 * here; a tab that is killed between takes them over again, under the same keys.
 * @param old where they were kept
 * @param store where they are kept from now on
 * @param now milliseconds since 1970, for nobody noted when they were packed
 * @returns whether there were any
 */
export async function takeOverUnsent(old: TextStore, store: OutboxStore, now: number): Promise<boolean> {
  const text = old.getItem(OLD_KEY);
  if (text === null) return false;
  const parcels = JSON.parse(text) as readonly PackedParcel[];
  for (const [index, parcel] of parcels.entries()) {
    // They were kept because a sending was not answered: the book may hold them.
    await store.keep({ ...newEntry(parcel, now + index), unansweredAt: now });
  }
  old.removeItem(OLD_KEY);
  return true;
}
