import { execFile } from "node:child_process";
import { createHash } from "node:crypto";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import Database from "better-sqlite3";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { MigrationRefused, migrateDatabase } from "#prisma/migrate";

const NOW = new Date("2026-11-25T10:30:00.000Z");

let folder = "";
let file = "";
let migrations = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wadding-migrate-"));
  file = join(folder, "shop.db");
  migrations = join(folder, "migrations");
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

function migration(name: string, sql: string): void {
  mkdirSync(join(migrations, name), { recursive: true });
  writeFileSync(join(migrations, name, "migration.sql"), sql);
}

function migrate() {
  return migrateDatabase(file, { folder: migrations, now: NOW });
}

function rows<T>(sql: string, of = file): T[] {
  const db = new Database(of, { readonly: true });
  try {
    return db.prepare<[], T>(sql).all();
  } finally {
    db.close();
  }
}

function refusalOf(work: () => unknown): MigrationRefused {
  try {
    work();
  } catch (error) {
    if (error instanceof MigrationRefused) return error;
    throw error;
  }
  throw new Error("nothing was refused");
}

const SHEETS = 'CREATE TABLE "Sheet" ("id" TEXT PRIMARY KEY, "colour" TEXT)';

describe("migrateDatabase", () => {
  it("makes a database in a folder that is not there yet", () => {
    migration("1_sheets", SHEETS);
    const deep = join(folder, "data", "deep", "shop.db");
    expect(migrateDatabase(deep, { folder: migrations, now: NOW })).toEqual({
      applied: ["1_sheets"],
      copy: null,
    });
    expect(rows('SELECT * FROM "Sheet"', deep)).toEqual([]);
  });

  it("records each migration as Prisma's own command does", () => {
    migration("1_sheets", SHEETS);
    migrate();
    const [row] = rows<Record<string, unknown>>('SELECT * FROM "_prisma_migrations"');
    expect(row).toMatchObject({
      migration_name: "1_sheets",
      checksum: createHash("sha256").update(SHEETS).digest("hex"),
      started_at: NOW.getTime(),
      finished_at: NOW.getTime(),
      rolled_back_at: null,
      applied_steps_count: 1,
    });
  });

  it("does nothing and copies nothing the second time", () => {
    migration("1_sheets", SHEETS);
    migrate();
    expect(migrate()).toEqual({ applied: [], copy: null });
    expect(readdirSync(folder).filter((name) => name.startsWith("before-"))).toEqual([]);
  });

  it("copies an existing database, with all its rows, before it applies a new migration", () => {
    migration("1_sheets", SHEETS);
    migrate();
    const db = new Database(file);
    db.exec(`INSERT INTO "Sheet" VALUES ('a', 'white')`);
    db.close();
    migration("2_size", 'ALTER TABLE "Sheet" ADD COLUMN "size" TEXT');
    const { applied, copy } = migrate();
    expect(applied).toEqual(["2_size"]);
    expect(copy).toBe(join(folder, "before-2_size-20261125T103000000Z.db"));
    expect(rows('SELECT * FROM "Sheet"', String(copy))).toEqual([{ id: "a", colour: "white" }]);
    expect(rows('SELECT * FROM "Sheet"')).toEqual([{ id: "a", colour: "white", size: null }]);
  });

  it("undoes a migration that fails half way, and keeps those before it", () => {
    migration("1_sheets", SHEETS);
    migration("2_broken", 'CREATE TABLE "Half" ("id" TEXT); CREATE TABLE "Sheet" ("id" TEXT)');
    expect(migrate).toThrow(/already exists/);
    expect(rows(`SELECT name FROM sqlite_schema WHERE name IN ('Half', 'Sheet')`)).toEqual([
      { name: "Sheet" },
    ]);
    expect(rows('SELECT migration_name FROM "_prisma_migrations"')).toEqual([{ migration_name: "1_sheets" }]);
  });

  it("rebuilds a table that others point at, and refuses to leave rows that point nowhere", () => {
    migration(
      "1_rolls",
      `CREATE TABLE "Kind" ("id" TEXT PRIMARY KEY);
       CREATE TABLE "Roll" ("id" TEXT PRIMARY KEY, "kind" TEXT REFERENCES "Kind" ("id"));
       INSERT INTO "Kind" VALUES ('small'); INSERT INTO "Roll" VALUES ('r', 'small');`,
    );
    migration(
      "2_rebuild",
      `CREATE TABLE "new" ("id" TEXT PRIMARY KEY, "note" TEXT); INSERT INTO "new" SELECT "id", '' FROM "Kind";
       DROP TABLE "Kind"; ALTER TABLE "new" RENAME TO "Kind";`,
    );
    migrate();
    expect(rows('SELECT * FROM "Kind"')).toEqual([{ id: "small", note: "" }]);
    migration("3_empty", 'DELETE FROM "Kind"');
    expect(refusalOf(migrate).kind).toBe("broken-references");
    expect(rows('SELECT "id" FROM "Kind"')).toEqual([{ id: "small" }]);
  });

  it("refuses a database that a newer version of the program has used", () => {
    migration("1_sheets", SHEETS);
    migration("2_later", 'CREATE TABLE "Later" ("id" TEXT)');
    migrate();
    rmSync(join(migrations, "2_later"), { recursive: true });
    const refusal = refusalOf(migrate);
    expect(refusal.kind).toBe("newer");
    expect(refusal.message).toContain("2_later");
  });

  it("refuses a migration whose file was changed after it was applied", () => {
    migration("1_sheets", SHEETS);
    migrate();
    migration("1_sheets", `${SHEETS} STRICT`);
    const refusal = refusalOf(migrate);
    expect(refusal.kind).toBe("changed");
    expect(refusal.message).toContain("1_sheets");
  });

  it("refuses a migration that another tool began and did not finish", () => {
    migration("1_sheets", SHEETS);
    migrate();
    const db = new Database(file);
    db.exec('UPDATE "_prisma_migrations" SET finished_at = NULL');
    db.close();
    expect(refusalOf(migrate).kind).toBe("unfinished");
  });

  it("refuses a database of some other program and leaves it as it was", () => {
    const db = new Database(file);
    db.exec('CREATE TABLE "Recipes" ("id" TEXT)');
    db.close();
    migration("1_sheets", SHEETS);
    expect(refusalOf(migrate).kind).toBe("not-ours");
    expect(rows("SELECT name FROM sqlite_schema")).toEqual([{ name: "Recipes" }]);
  });

  it("applies a migration once when three starts meet", async () => {
    const start = () =>
      promisify(execFile)(process.execPath, ["--import", "tsx", "app/command-line/migrate.ts", file]);
    const said = await Promise.all([start(), start(), start()]);
    expect(said.filter(({ stdout }) => stdout.includes("Migrated"))).toHaveLength(1);
    expect(said.map(({ stderr }) => stderr)).toEqual(["", "", ""]);
  });
});

describe("the project's own migrations", () => {
  /** Tables and columns of the schema, read from its models: the migrated database must hold the same. */
  const schema = readFileSync("prisma/schema.prisma", "utf8");
  const models = [...schema.matchAll(/^model (\w+) \{\n([\s\S]*?)^\}/gm)].map(([, name = "", body = ""]) => ({
    name,
    fields: [...body.matchAll(/^ {2}(\w+)\s+(\w+)(\?|\[\])?/gm)].map(
      ([, field = "", type = "", mark = ""]) => ({
        field,
        type,
        mark,
      }),
    ),
  }));
  const SQL_TYPES: Readonly<Record<string, string>> = {
    String: "TEXT",
    Int: "INTEGER",
    BigInt: "BIGINT",
    Boolean: "BOOLEAN",
    Float: "REAL",
  };

  it("lead to exactly the tables, columns, types and nullability of the schema", () => {
    migrateDatabase(file, { now: NOW });
    expect(models.length).toBeGreaterThan(20);
    const wanted = models.map(({ name, fields }) => [
      name,
      fields
        .filter(({ type, mark }) => SQL_TYPES[type] !== undefined && mark !== "[]")
        .map(({ field, type, mark }) => `${field} ${SQL_TYPES[type]}${mark === "?" ? "" : " NOT NULL"}`)
        .sort(),
    ]);
    const tables = rows<{ name: string }>(
      "SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE '\\_%' ESCAPE '\\'",
    );
    const found = tables.map(({ name }) => [
      name,
      rows<{ name: string; type: string; notnull: number }>(`PRAGMA table_info("${name}")`)
        .map((column) => `${column.name} ${column.type}${column.notnull === 1 ? " NOT NULL" : ""}`)
        .sort(),
    ]);
    expect(Object.fromEntries(found)).toEqual(Object.fromEntries(wanted));
  });

  it("hold every index and unique rule of the schema", () => {
    migrateDatabase(file, { now: NOW });
    const wanted = [...schema.matchAll(/^model (\w+) \{\n([\s\S]*?)^\}/gm)].flatMap(
      ([, model = "", body = ""]) => [
        ...[...body.matchAll(/^ {2}@@(index|unique)\(\[([^\]]+)\]/gm)].map(
          ([, kind, columns = ""]) => `${model}(${columns}) ${kind}`,
        ),
        ...[...body.matchAll(/^ {2}(\w+)\s.*@unique/gm)].map(([, column]) => `${model}(${column}) unique`),
      ],
    );
    const found = models.flatMap(({ name }) =>
      rows<{ name: string; unique: number; origin: string }>(`PRAGMA index_list("${name}")`)
        .filter(({ origin }) => origin === "c")
        .map((index) => {
          const columns = rows<{ name: string }>(`PRAGMA index_info("${index.name}")`).map(
            (info) => info.name,
          );
          return `${name}(${columns.join(", ")}) ${index.unique === 1 ? "unique" : "index"}`;
        }),
    );
    expect(found.sort()).toEqual(wanted.sort());
    expect(existsSync(file)).toBe(true);
  });
});
