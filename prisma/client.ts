import { mkdirSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { PrismaBetterSqlite3 } from "@prisma/adapter-better-sqlite3";
import { PrismaClient } from "./generated/client";

/** The reading side of an open database. Writes go through `inTransaction`. */
export type Database = PrismaClient;

/** What a record function gets inside one transaction. */
export type Transaction = Omit<
  PrismaClient,
  "$connect" | "$disconnect" | "$on" | "$transaction" | "$extends"
>;

const BUSY_TIMEOUT_MS = 15_000;
const TRANSACTION_WAIT_MS = 60_000;

/** Kibibytes of pages kept in memory on each connection; SQLite gives them as a negative number. */
const CACHE_KIB = 16_000;

/** Pages in the log before they are brought into the file: each parcel writes some thirty. */
const CHECKPOINT_PAGES = 4_000;

const SETTINGS = {
  journal_mode: "wal",
  foreign_keys: 1,
  synchronous: 2,
  busy_timeout: BUSY_TIMEOUT_MS,
  cache_size: -CACHE_KIB,
  wal_autocheckpoint: CHECKPOINT_PAGES,
};

type Setting = { readonly name: string; readonly value: string | number };

/**
 * An adapter that puts the database's settings on every connection it opens and reads them back,
 * so that no parcel is ever written without foreign keys or without a full flush to disk.
 *
 * @param url path of the database file
 * @param queryOnly true for the reading side, where a write is a mistake
 */
class SettledAdapter extends PrismaBetterSqlite3 {
  readonly #queryOnly: boolean;

  constructor(url: string, queryOnly: boolean) {
    super({ url, timeout: BUSY_TIMEOUT_MS });
    this.#queryOnly = queryOnly;
  }

  override async connect() {
    const connection = await super.connect();
    const wanted: Setting[] = Object.entries(SETTINGS).map(([name, value]) => ({ name, value }));
    wanted.push({ name: "query_only", value: this.#queryOnly ? 1 : 0 });
    for (const { name, value } of wanted) {
      await connection.executeScript(`PRAGMA ${name} = ${value}`);
      const answer = await connection.queryRaw({ sql: `PRAGMA ${name}`, args: [], argTypes: [] });
      const found = String(answer.rows[0]?.[0]);
      if (found !== String(value)) {
        throw new Error(`The database refused the setting ${name} = ${value} and kept ${found}`);
      }
    }
    return connection;
  }
}

declare global {
  // One per process, also across the copies of this module that a bundler makes.
  var waddingWriters: WeakMap<Database, PrismaClient> | undefined;
  var waddingDatabase: Promise<Database> | undefined;
}

globalThis.waddingWriters ??= new WeakMap();
const writers = globalThis.waddingWriters;

/**
 * Opens a migrated database file with one connection to read and one to write. They are two because
 * a query on a connection with an open transaction would see, and be rolled back with, its half-done work.
 *
 * @param file path of the SQLite file
 * @returns the reading side
 * @throws Error when a setting does not hold on a connection
 */
export async function openDatabase(file: string): Promise<Database> {
  mkdirSync(dirname(resolve(file)), { recursive: true });
  const writer = new PrismaClient({ adapter: new SettledAdapter(file, false) });
  await writer.$connect();
  const reader = new PrismaClient({ adapter: new SettledAdapter(file, true) });
  await reader.$connect();
  writers.set(reader, writer);
  return reader;
}

/** Closes both connections of a database. */
export async function closeDatabase(db: Database): Promise<void> {
  await db.$disconnect();
  await writers.get(db)?.$disconnect();
}

/**
 * Runs `work` in one transaction that holds the write lock from its first statement on: all of it is
 * kept, or nothing.
 *
 * @param db the database as opened
 * @param work what to do; gets the transaction
 * @returns what `work` returned
 */
export async function inTransaction<T>(db: Database, work: (tx: Transaction) => Promise<T>): Promise<T> {
  const writer = writers.get(db);
  if (writer === undefined) throw new TypeError("inTransaction requires a database from openDatabase");
  return writer.$transaction(
    async (tx) => {
      // A write first: a transaction that began by reading cannot wait for another writer's lock.
      await tx.$executeRaw`UPDATE "Shop" SET "name" = "name" WHERE 0`;
      return work(tx);
    },
    { maxWait: TRANSACTION_WAIT_MS, timeout: TRANSACTION_WAIT_MS },
  );
}

/** Path of the database file: WADDING_DATABASE, or data/wadding.db under the working directory. */
export function databaseFile(): string {
  return resolve(/* turbopackIgnore: true */ process.env.WADDING_DATABASE ?? "data/wadding.db");
}

/** The process-wide database of the program. */
export function database(): Promise<Database> {
  globalThis.waddingDatabase ??= openDatabase(databaseFile());
  return globalThis.waddingDatabase;
}
