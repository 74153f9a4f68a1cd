import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fileHead } from "#app/import/file-head.ts";
import { guessedMapping } from "#app/import/guessed-mapping.ts";
import { stageFile } from "#app/import/stage-file.ts";
import { closeDatabase, openDatabase } from "#prisma/client";
import { commitImport } from "#prisma/records/import/commit-import";
import { openImportConnection } from "#prisma/records/import/import-connection";
import { createImportRun, type ImportRun, importRunOf } from "#prisma/records/import/import-runs";
import { sweepUnfinishedImports } from "#prisma/records/import/sweep-unfinished-imports";
import { type LightShop, lightShop } from "./light-shop";

const NOW = "2026-11-25T18:00:00.000Z";
const ROWS = 4000;

let shop: LightShop;
beforeEach(() => {
  shop = lightShop();
});
afterEach(() => shop.close());

function count(table: string): number {
  return shop.db.prepare<[], number>(`SELECT COUNT(*) FROM "${table}"`).pluck().get() ?? Number.NaN;
}

/** Stages a long file over a connection of its own, as a process that outlived its server does. */
async function stageBesides(runId: string): Promise<ImportRun> {
  const path = join(shop.folder, "orders.csv");
  const rows = Array.from({ length: ROWS }, (_, at) => `2026-07-01,A${at},mug,1`);
  writeFileSync(path, `date,order,item type,pieces\n${rows.join("\n")}\n`);
  const head = await fileHead(path);
  if (head.kind !== "head") throw new RangeError("the file has no head");
  const db = openImportConnection(shop.file);
  try {
    return await stageFile(db, runId, path, { head, mapping: guessedMapping(head), now: NOW, pauseMs: 5 });
  } finally {
    db.close();
  }
}

describe("sweep of unfinished imports", () => {
  it.each(["StagedRow", "StagedParcel"])(
    "keeps a process that still stages from bringing its run back, once it wrote to %s",
    async (table) => {
      const file = { source: "orders", fileName: "orders.csv", fileHash: "f" };
      const runId = createImportRun(shop.db, file, NOW);
      const staging = stageBesides(runId);
      while (count(table) === 0) await new Promise((resolve) => setTimeout(resolve, 1));
      expect(count(table)).toBeLessThan(ROWS);
      const database = await openDatabase(shop.file);
      expect(await sweepUnfinishedImports(database)).toBe(1);
      await closeDatabase(database);
      expect(await staging).toMatchObject({ state: "cancelled" });
      expect([count("StagedRow"), count("StagedParcel"), count("StagedUse")]).toEqual([0, 0, 0]);
      const terms = { device: "import", now: NOW, pause: () => Promise.resolve() };
      expect(await commitImport(shop.db, runId, terms)).toEqual({ kind: "not-ready" });
      expect(importRunOf(shop.db, runId)?.state).toBe("cancelled");
      expect(count("Parcel")).toBe(0);
    },
  );
});
