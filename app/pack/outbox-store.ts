import { keptAgain, type OutboxEntry } from "./outbox-entry";

/** Where kept parcels lie: each under its own key, each change whole or not at all. */
export type OutboxStore = {
  readonly all: () => Promise<readonly OutboxEntry[]>;
  /** Keeps an entry; one kept before under the same key gives it its place in the row. */
  readonly keep: (entry: OutboxEntry) => Promise<void>;
  /**
   * Changes an entry as it stands now, whatever other tabs did: `change` gives the new entry, or null to let go of it.
   * Resolves to what is kept afterwards; null where nothing is.
   */
  readonly change: (
    id: string,
    change: (entry: OutboxEntry) => OutboxEntry | null,
  ) => Promise<OutboxEntry | null>;
};

const DATABASE = "wadding-outbox";
const VERSION = 1;
const PARCELS = "parcels";

/**
 * The outbox in the browser's own database, which all tabs of this device share. Each of its functions rejects with a
 * DOMException where the browser keeps nothing for this page: storage is blocked, or full.
 * @param factory the browser's `indexedDB`
 * @returns the store; it opens itself when it is used, and again where the browser closed it
 * @see W3C, Indexed Database API: transactions are atomic, and run one after another where they write
 */
export function outboxStore(factory: IDBFactory): OutboxStore {
  let opened: Promise<IDBDatabase> | null = null;
  const forget = (): void => {
    opened = null;
  };
  const connection = (): Promise<IDBDatabase> => {
    if (opened === null) {
      opened = openDatabase(factory, forget);
      // It is tried anew next time; this time's asker is told by the same promise.
      opened.catch(forget);
    }
    return opened;
  };
  return {
    all: async () =>
      answerOf<OutboxEntry[]>(
        (await connection()).transaction(PARCELS, "readonly").objectStore(PARCELS).getAll(),
      ),
    keep: async (entry) => {
      await written(await connection(), entry.id, "strict", (before) => keptAgain(entry, before));
    },
    change: async (id, change) =>
      written(await connection(), id, "relaxed", (before) => (before === undefined ? null : change(before))),
  };
}

/** Opens the database; `onClosed` is called when the browser closes it again. */
async function openDatabase(factory: IDBFactory, onClosed: () => void): Promise<IDBDatabase> {
  const opening = factory.open(DATABASE, VERSION);
  opening.onupgradeneeded = () => opening.result.createObjectStore(PARCELS, { keyPath: "id" });
  const db = await answerOf(opening);
  db.onclose = onClosed;
  // A later version of the program in another tab wants to change the form of the store.
  db.onversionchange = () => {
    db.close();
    onClosed();
  };
  return db;
}

/**
 * Reads and writes one entry in one transaction. "strict" resolves once it is safely on the disk: a device that is
 * switched off the moment after must still know a new parcel. What follows may be forgotten so, as it is only done again.
 */
function written(
  db: IDBDatabase,
  id: string,
  durability: "strict" | "relaxed",
  next: (before: OutboxEntry | undefined) => OutboxEntry | null,
): Promise<OutboxEntry | null> {
  return new Promise((resolve, reject) => {
    const transaction = db.transaction(PARCELS, "readwrite", { durability });
    const parcels = transaction.objectStore(PARCELS);
    const reading: IDBRequest<OutboxEntry | undefined> = parcels.get(id);
    let after: OutboxEntry | null = null;
    reading.onsuccess = () => {
      after = next(reading.result);
      if (after !== null) parcels.put(after);
      else if (reading.result !== undefined) parcels.delete(id);
    };
    transaction.oncomplete = () => resolve(after);
    transaction.onabort = () => reject(transaction.error);
  });
}

function answerOf<Result>(request: IDBRequest<Result>): Promise<Result> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}
