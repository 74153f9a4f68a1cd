import { describe, expect, it } from "vitest";
import { inTransaction } from "#prisma/client";
import { shopFixture } from "./records/shop-fixture";

const SETTINGS = [
  "journal_mode",
  "foreign_keys",
  "synchronous",
  "busy_timeout",
  "cache_size",
  "wal_autocheckpoint",
];

describe("a connection", () => {
  it("holds write-ahead logging, foreign keys, full flush and the waiting time, reading and writing", async () => {
    const shop = await shopFixture();
    const wanted = ["wal", "1", "2", "15000", "-16000", "4000"];
    const read = async (query: (sql: string) => Promise<Record<string, unknown>[]>) => {
      const answers: string[] = [];
      for (const name of SETTINGS)
        answers.push(String(Object.values((await query(`PRAGMA ${name}`))[0] ?? {})[0]));
      return answers;
    };
    expect(await read((sql) => shop.db.$queryRawUnsafe(sql))).toEqual(wanted);
    expect(await inTransaction(shop.db, (tx) => read((sql) => tx.$queryRawUnsafe(sql)))).toEqual(wanted);
    await shop.close();
  });

  it("refuses to write on the reading side", async () => {
    const shop = await shopFixture();
    await expect(shop.db.zone.create({ data: { id: "far", name: "Far" } })).rejects.toThrow(/readonly/i);
    await shop.close();
  });

  it("keeps nothing of a transaction that fails", async () => {
    const shop = await shopFixture();
    const failing = inTransaction(shop.db, async (tx) => {
      await tx.zone.create({ data: { id: "far", name: "Far" } });
      throw new Error("stopped half-way");
    });
    await expect(failing).rejects.toThrow("stopped half-way");
    expect(await shop.db.zone.findUnique({ where: { id: "far" } })).toBeNull();
    await shop.close();
  });
});
