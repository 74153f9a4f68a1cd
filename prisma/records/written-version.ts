import type { Database } from "../client";

/**
 * A number that differs once anything was written to the database, by this process or another (SQLite, `PRAGMA
 * data_version`: it counts the commits of other connections, and writing has a connection of its own).
 *
 * @param db the database
 * @returns the version, to be compared with an earlier one of the same process only
 */
export async function writtenVersion(db: Database): Promise<string> {
  const [row] = await db.$queryRaw<{ readonly data_version: number | bigint }[]>`PRAGMA data_version`;
  if (row === undefined) throw new Error("The database did not tell its version");
  return String(row.data_version);
}
