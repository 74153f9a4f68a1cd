import { keptAgain, type OutboxEntry } from "#app/pack/outbox-entry.ts";
import type { OutboxStore } from "#app/pack/outbox-store.ts";

/** An outbox in memory: as the browser's own, each change is whole. */
export function memoryOutbox(): OutboxStore {
  const kept = new Map<string, OutboxEntry>();
  return {
    all: async () => [...kept.values()],
    keep: async (entry) => {
      kept.set(entry.id, keptAgain(entry, kept.get(entry.id)));
    },
    change: async (id, change) => {
      const before = kept.get(id);
      const after = before === undefined ? null : change(before);
      if (after === null) kept.delete(id);
      else kept.set(id, after);
      return after;
    },
  };
}

/** A parcel of one mug under a key. */
export function packedMug(id: string) {
  return {
    form: { id, packedOn: "2026-03-10", style: "paper" as const, pieces: [{ itemTypeId: "mug", pieces: 1 }] },
    words: "1 × Mug",
  };
}
