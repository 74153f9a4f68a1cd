import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { backupDatabase, restoreDatabase } from "#prisma/backup";
import { migrateDatabase } from "#prisma/migrate";

const NOW = new Date("2026-11-25T10:30:00.000Z");

let folder = "";
let file = "";
let backup = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wadding-backup-"));
  file = join(folder, "shop.db");
  backup = join(folder, "backups", "monday.db");
  migrateDatabase(file, { now: NOW });
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function addZones(names: readonly string[]): void {
  const db = new Database(file);
  const add = db.prepare(`INSERT INTO "Zone" ("id", "name") VALUES (?, ?)`);
  for (const name of names) add.run(name, name);
  db.close();
}

function zones(of: string): unknown[] {
  const db = new Database(of, { readonly: true });
  try {
    return db.prepare(`SELECT "id" FROM "Zone" ORDER BY "id"`).pluck().all();
  } finally {
    db.close();
  }
}

describe("backupDatabase", () => {
  it("copies every table and counts its rows", async () => {
    addZones(["near", "far"]);
    const result = await backupDatabase(file, backup);
    expect(result.kind).toBe("backed-up");
    expect(result).toMatchObject({
      tables: expect.arrayContaining([expect.objectContaining({ table: "Zone", rows: 2 })]),
    });
    expect(zones(backup)).toEqual(["far", "near"]);
  });

  it("needs no file beside itself", async () => {
    await backupDatabase(file, backup);
    expect([existsSync(`${backup}-wal`), existsSync(`${backup}.partial`)]).toEqual([false, false]);
  });

  it("holds what was committed when it began, while another connection is writing", async () => {
    addZones(["near"]);
    const writer = new Database(file);
    writer.pragma("journal_mode = wal");
    writer.exec(`BEGIN IMMEDIATE; INSERT INTO "Zone" ("id", "name") VALUES ('half', 'half')`);
    const running = backupDatabase(file, backup);
    writer.exec(`INSERT INTO "Zone" ("id", "name") VALUES ('later', 'later'); COMMIT`);
    expect((await running).kind).toBe("backed-up");
    writer.close();
    expect(zones(backup)).toEqual(["near"]);
    expect(zones(file)).toEqual(["half", "later", "near"]);
  });

  it("never writes over a file", async () => {
    writeFileSync(join(folder, "letter.txt"), "dear");
    expect(await backupDatabase(file, join(folder, "letter.txt"))).toMatchObject({ kind: "target-exists" });
    expect(readFileSync(join(folder, "letter.txt"), "utf8")).toBe("dear");
  });

  it("says that there is no database", async () => {
    expect(await backupDatabase(join(folder, "none.db"), backup)).toMatchObject({ kind: "no-database" });
  });
});

describe("restoreDatabase", () => {
  it("brings back what the backup held and keeps what stood there", async () => {
    addZones(["near"]);
    await backupDatabase(file, backup);
    addZones(["mistake"]);
    const result = restoreDatabase(backup, file, NOW);
    const replaced = join(folder, "replaced-20261125T103000000Z.db");
    expect(result).toMatchObject({ kind: "restored", replaced });
    expect(zones(file)).toEqual(["near"]);
    expect(zones(replaced)).toEqual(["mistake", "near"]);
  });

  it("restores to a place where no database was", async () => {
    addZones(["near"]);
    await backupDatabase(file, backup);
    const elsewhere = join(folder, "new", "shop.db");
    expect(restoreDatabase(backup, elsewhere, NOW)).toMatchObject({ kind: "restored", replaced: null });
    expect(zones(elsewhere)).toEqual(["near"]);
  });

  it("refuses while a program has the database open", async () => {
    await backupDatabase(file, backup);
    const program = new Database(file);
    program.prepare(`SELECT count(*) FROM "Zone"`).get();
    expect(restoreDatabase(backup, file, NOW)).toEqual({ kind: "in-use", file });
    program.close();
    expect(restoreDatabase(backup, file, NOW).kind).toBe("restored");
  });

  it("refuses a file that is no database, or another program's, and changes nothing", async () => {
    addZones(["near"]);
    const letter = join(folder, "letter.txt");
    writeFileSync(letter, "dear reader, ".repeat(1_000));
    expect(restoreDatabase(letter, file, NOW)).toMatchObject({ kind: "unreadable" });
    const other = join(folder, "other.db");
    const db = new Database(other);
    db.exec(`CREATE TABLE "Recipes" ("id" TEXT)`);
    db.close();
    expect(restoreDatabase(other, file, NOW)).toMatchObject({
      kind: "unreadable",
      reason: "it is not a database of this program",
    });
    expect(restoreDatabase(join(folder, "none.db"), file, NOW)).toMatchObject({ kind: "no-backup" });
    expect(zones(file)).toEqual(["near"]);
  });
});
