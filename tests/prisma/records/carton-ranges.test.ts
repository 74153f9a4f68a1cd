import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type KeptRange, keepRange, rangeHash, rangeKept } from "#prisma/records/carton-ranges";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const BEGUN: KeptRange = {
  points: [],
  most: 2,
  today: { value: 9_000, unpackedParcels: 1 },
  earns: [],
  steps: [],
  notProven: [0, 3],
  failed: null,
};
const DONE: KeptRange = {
  ...BEGUN,
  points: [
    {
      ...{ most: 1, chosen: [2], value: 8_000, unpackedParcels: 0 },
      proof: { boundValue: 8_000, gap: 0, proven: true, solver: { kind: "not-needed" } },
    },
  ],
  earns: [[{ size: 2, parcels: 7, earnedValue: 500, onlyHere: 1 }]],
  steps: [{ beforeValue: 9_000, steps: [], neverRises: true }],
};

describe("the key of a question", () => {
  const question = { loads: [{ ml: 12.5 }], card: { ounces: { numerator: 16n, denominator: 1n } } };

  it("is the same for the same question, and 64 hexadecimal digits", () => {
    expect(rangeHash(structuredClone(question))).toBe(rangeHash(question));
    expect(rangeHash(question)).toMatch(/^[0-9a-f]{64}$/);
  });

  it("differs where a whole number of the rate card does, and is not that of the text or the plain number", () => {
    const with15 = { ...question, card: { ounces: { numerator: 15n, denominator: 1n } } };
    expect(rangeHash(with15)).not.toBe(rangeHash(question));
    expect(rangeHash({ ounces: 16n })).not.toBe(rangeHash({ ounces: 16 }));
    expect(rangeHash({ ounces: 16n })).not.toBe(rangeHash({ ounces: "16" }));
  });
});

describe("kept ranges", () => {
  let shop: ShopFixture;
  beforeEach(async () => {
    shop = await shopFixture();
  });
  afterEach(() => shop.close());
  const at = (minute: number) => `2026-03-20T10:${String(minute).padStart(2, "0")}:00.000Z`;

  it("come back as they were kept, the last one for a question", async () => {
    expect(await rangeKept(shop.db, "a")).toBeNull();
    await keepRange(shop.db, "a", BEGUN, at(0));
    await keepRange(shop.db, "b", BEGUN, at(1));
    await keepRange(shop.db, "a", DONE, at(2));
    expect(await rangeKept(shop.db, "a")).toEqual({ range: DONE, madeAt: at(2) });
    expect(await rangeKept(shop.db, "b")).toEqual({ range: BEGUN, madeAt: at(1) });
  });

  it("are ten at most: the oldest go, and one that is worked on again is not old", async () => {
    for (let index = 0; index < 10; index += 1) await keepRange(shop.db, `${index}`, BEGUN, at(index));
    await keepRange(shop.db, "0", DONE, at(20));
    await keepRange(shop.db, "another", BEGUN, at(21));
    expect(await rangeKept(shop.db, "1")).toBeNull();
    expect(await rangeKept(shop.db, "0")).not.toBeNull();
    expect(await rangeKept(shop.db, "2")).not.toBeNull();
    expect(await shop.db.cartonRange.count()).toBe(10);
  });
});
