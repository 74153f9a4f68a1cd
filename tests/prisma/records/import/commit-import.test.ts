import { spawn } from "node:child_process";
import { once } from "node:events";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fileHead } from "#app/import/file-head.ts";
import { finishCommits } from "#app/import/finish-commits.ts";
import { guessedMapping } from "#app/import/guessed-mapping.ts";
import { stageFile } from "#app/import/stage-file.ts";
import { closeDatabase, openDatabase } from "#prisma/client";
import { commitImport } from "#prisma/records/import/commit-import";
import { importPreview } from "#prisma/records/import/import-preview";
import { createImportRun, importRunOf } from "#prisma/records/import/import-runs";
import { sweepUnfinishedImports } from "#prisma/records/import/sweep-unfinished-imports";
import { proveRollUps } from "#prisma/records/roll-ups";
import { type LightShop, lightShop } from "./light-shop";

const NOW = "2026-11-25T18:00:00.000Z";
const BY = { device: "import", now: NOW, pause: () => Promise.resolve() };
const ROOT = join(import.meta.dirname, "../../../..");

let shop: LightShop;
beforeEach(() => {
  shop = lightShop();
});
afterEach(() => shop.close());

async function staged(text: string): Promise<string> {
  const path = join(shop.folder, "orders.csv");
  writeFileSync(path, text);
  const runId = createImportRun(shop.db, { source: "orders", fileName: "orders.csv", fileHash: "f" }, NOW);
  const head = await fileHead(path);
  if (head.kind !== "head") throw new RangeError("the file has no head");
  await stageFile(shop.db, runId, path, { head, mapping: guessedMapping(head), now: NOW, pauseMs: 0 });
  return runId;
}

async function expectEqualRollUps(): Promise<void> {
  const database = await openDatabase(shop.file);
  expect(await proveRollUps(database)).toEqual({ equal: true, differences: [] });
  await closeDatabase(database);
}

function count(table: string): number {
  return shop.db.prepare<[], { n: number }>(`SELECT COUNT(*) AS "n" FROM "${table}"`).get()?.n ?? -1;
}

const ORDERS =
  "date,order,item type,pieces\n2026-07-01,A1,mug,2\n2026-07-01,A1,plate,1\n2026-07-03,A2,plate,1\n";

describe("preview of an import", () => {
  it("says what would be booked before anything is", async () => {
    const runId = await staged(ORDERS);
    expect(importRunOf(shop.db, runId)).toMatchObject({ state: "ready", rowsRead: 3, newParcels: 2 });
    expect(importPreview(shop.db, runId, 10)).toMatchObject({
      firstDay: "2026-07-01",
      lastDay: "2026-07-03",
      orders: 2,
      types: [
        { name: "Mug", parcels: 1, pieces: 3, isNew: false, withoutUse: 0 },
        { name: "Plate", parcels: 1, pieces: 1, isNew: false, withoutUse: 0 },
      ],
    });
    expect([count("Parcel"), count("Movement"), count("BuyerOrder")]).toEqual([0, 0, 0]);
  });
});

describe("commit of an import", () => {
  it("books a run once, however often it is asked to", async () => {
    const runId = await staged(ORDERS);
    expect(await commitImport(shop.db, runId, BY)).toEqual({
      kind: "committed",
      newParcels: 2,
      changedParcels: 0,
    });
    expect(await commitImport(shop.db, runId, BY)).toEqual({ kind: "not-ready" });
    expect(count("Parcel")).toBe(2);
  });

  it("books nothing where a parcel was put right by hand since the preview", async () => {
    await commitImport(shop.db, await staged(ORDERS), BY);
    const runId = await staged(ORDERS.replace("A2,plate,1", "A2,plate,4"));
    shop.db.prepare(`UPDATE "Parcel" SET "bodyHash" = 'by hand' WHERE "sourceRef" = 'order:1:A2'`).run();
    const before = count("Movement");
    expect(await commitImport(shop.db, runId, BY)).toEqual({ kind: "stale" });
    expect(count("Movement")).toBe(before);
  });

  it("in parts gives the same books as at once, of changed parcels too", async () => {
    const rows = Array.from(
      { length: 25 },
      (_, at) => `2026-07-${String(at + 1).padStart(2, "0")},C${at},mug,2`,
    );
    const text = `date,order,item type,pieces\n${rows.join("\n")}\n`;
    const booksOf = async (partSize: number): Promise<unknown> => {
      const other = lightShop();
      const own = shop;
      shop = other;
      await commitImport(other.db, await staged(text), { ...BY, partSize });
      await commitImport(other.db, await staged(text.replaceAll("mug,2", "mug,5")), { ...BY, partSize });
      await expectEqualRollUps();
      const books = ["SupplyStock", "SupplyDay", "ParcelDay", "ParcelPiece"].map((table) =>
        other.db.prepare(`SELECT * FROM "${table}" ORDER BY 1, 2, 3`).all(),
      );
      shop = own;
      other.close();
      return books;
    };
    expect(await booksOf(4)).toEqual(await booksOf(1000));
  });

  it("leaves a parcel alone that was put right by hand after the first part was booked", async () => {
    const rows = Array.from({ length: 6 }, (_, at) => `2026-07-01,D${at},mug,1`);
    const text = `date,order,item type,pieces\n${rows.join("\n")}\n`;
    await commitImport(shop.db, await staged(text), BY);
    const runId = await staged(text.replaceAll("mug,1", "mug,3"));
    const byHand = `UPDATE "Parcel" SET "bodyHash" = 'by hand' WHERE "sourceRef" = 'order:1:D5'`;
    const pause = async (): Promise<void> => {
      shop.db.prepare(byHand).run();
    };
    expect(await commitImport(shop.db, runId, { ...BY, partSize: 2, pause })).toMatchObject({
      kind: "committed",
    });
    const pieces = shop.db
      .prepare(
        `SELECT p."sourceRef", e."pieces" FROM "Parcel" p JOIN "ParcelPiece" e ON e."parcelId" = p."id" ORDER BY 1`,
      )
      .raw()
      .all();
    expect(pieces.map((row) => (row as unknown[])[1])).toEqual([3, 3, 3, 3, 3, 1]);
    await expectEqualRollUps();
  });

  it("keeps on hand equal to the sum of the ledger", async () => {
    await commitImport(shop.db, await staged(ORDERS), BY);
    await commitImport(shop.db, await staged(ORDERS.replace("mug,2", "mug,7")), BY);
    const sums = shop.db
      .prepare(`SELECT "supplyId", SUM("amount") AS "amount" FROM "Movement" GROUP BY 1 ORDER BY 1`)
      .all();
    const stock = shop.db.prepare(`SELECT "supplyId", "amount" FROM "SupplyStock" ORDER BY 1`).all();
    expect(stock).toEqual(sums);
  });

  it("goes on at the next start where its process was killed, and its books are right in between", async () => {
    const path = join(shop.folder, "big.csv");
    const rows = Array.from(
      { length: 6000 },
      (_, at) => `2026-07-${String((at % 28) + 1).padStart(2, "0")},B${at},mug,1`,
    );
    writeFileSync(path, `date,order,item type,pieces\n${rows.join("\n")}\n`);
    const states: string[] = [];
    for (const booked of [0, 1000, 3000]) {
      const runId = createImportRun(
        shop.db,
        { source: `s${booked}`, fileName: "big.csv", fileHash: "f" },
        NOW,
      );
      const head = await fileHead(path);
      if (head.kind !== "head") throw new RangeError("the file has no head");
      await stageFile(shop.db, runId, path, { head, mapping: guessedMapping(head), now: NOW, pauseMs: 0 });
      const before = count("Parcel");
      const script = join(ROOT, "app/import/run-import.ts");
      const child = spawn(
        process.execPath,
        ["--import", "tsx", script, shop.file, runId, path, "commit", NOW],
        { cwd: ROOT },
      );
      const exit = once(child, "exit");
      while (importRunOf(shop.db, runId)?.state === "ready" || count("Parcel") - before < booked)
        await new Promise((resolve) => setTimeout(resolve, 1));
      child.kill("SIGKILL");
      await exit;
      writeFileSync(path, `date,order,item type,pieces\n${rows.join("\n")}\n`);
      const state = importRunOf(shop.db, runId)?.state ?? "";
      states.push(state);
      // Booked in parts of 1,000, each whole.
      expect((count("Parcel") - before) % 1000).toBe(0);
      await expectEqualRollUps();
      expect(await finishCommits(shop.file, NOW)).toBe(state === "committed" ? 0 : 1);
      expect(count("Parcel") - before).toBe(6000);
      await expectEqualRollUps();
      expect(importRunOf(shop.db, runId)).toMatchObject({ state: "committed", newParcels: 6000 });
    }
    const database = await openDatabase(shop.file);
    await sweepUnfinishedImports(database);
    await closeDatabase(database);
    expect([count("StagedRow"), count("StagedParcel"), count("StagedUse")]).toEqual([0, 0, 0]);
    expect(states).toContain("committing");
    expect(shop.db.pragma("integrity_check")).toEqual([{ integrity_check: "ok" }]);
  });
});
