import { describe, expect, it } from "vitest";
import { inOrderPacked } from "#app/pack/outbox-entry.ts";
import { takeOverUnsent } from "#app/pack/take-over-unsent.ts";
import { memoryOutbox, packedMug } from "./memory-outbox";

const OLD_KEY = "wadding-unsent-parcels";

function textStore(texts: Map<string, string>) {
  return {
    getItem: (key: string) => texts.get(key) ?? null,
    removeItem: (key: string) => void texts.delete(key),
  };
}

describe("parcels that an earlier version kept", () => {
  it("are taken over once, in their order, and count as perhaps recorded", async () => {
    const texts = new Map([[OLD_KEY, JSON.stringify([packedMug("key-b"), packedMug("key-a")])]]);
    const store = memoryOutbox();
    expect(await takeOverUnsent(textStore(texts), store, 500)).toBe(true);
    expect(await takeOverUnsent(textStore(texts), store, 900)).toBe(false);
    const entries = inOrderPacked(await store.all());
    expect(entries.map(({ id, unansweredAt }) => [id, unansweredAt])).toEqual([
      ["key-b", 500],
      ["key-a", 500],
    ]);
    expect(texts.size).toBe(0);
  });

  it("stay where they are until they are kept here", async () => {
    const texts = new Map([[OLD_KEY, JSON.stringify([packedMug("key-a")])]]);
    const full = {
      ...memoryOutbox(),
      keep: () => Promise.reject(new DOMException("full", "QuotaExceededError")),
    };
    await expect(takeOverUnsent(textStore(texts), full, 0)).rejects.toThrow("full");
    expect(texts.has(OLD_KEY)).toBe(true);
  });
});
