import { describe, expect, it } from "vitest";
import { forgetUnsent, keepUnsent, type TextStore, unsentParcels } from "#app/pack/unsent-parcels.ts";

function memoryStore(): TextStore {
  const kept = new Map<string, string>();
  return { getItem: (key) => kept.get(key) ?? null, setItem: (key, text) => void kept.set(key, text) };
}

const parcel = (id: string) => ({
  form: { id, packedOn: "2026-03-10", style: "paper" as const, pieces: [{ itemTypeId: "mug", pieces: 1 }] },
  words: "1 × Mug",
});

describe("unsent parcels", () => {
  it("are kept oldest first, one for each key, until they are let go of", () => {
    const store = memoryStore();
    keepUnsent(store, parcel("key-00001"));
    keepUnsent(store, parcel("key-00002"));
    keepUnsent(store, parcel("key-00002"));
    expect(unsentParcels(store).map((kept) => kept.form.id)).toEqual(["key-00001", "key-00002"]);
    forgetUnsent(store, "key-00001");
    expect(unsentParcels(store).map((kept) => kept.form.id)).toEqual(["key-00002"]);
  });
});
