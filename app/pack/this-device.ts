import type { OutboxMeans } from "./outbox";
import { outboxStore } from "./outbox-store";
import { sendParcel, takeBackParcel } from "./send-parcel";

let means: OutboxMeans | null = null;

/**
 * The outbox of this device: one for all screens of a tab, so that a parcel on its way is known wherever the packer
 * goes meanwhile.
 * @returns the store and the ways to the program
 */
export function thisDevice(): OutboxMeans {
  means ??= {
    store: outboxStore(indexedDB),
    send: (form) => sendParcel(form, "record"),
    takeBack: takeBackParcel,
    now: Date.now,
    onTheWay: new Set(),
  };
  return means;
}
