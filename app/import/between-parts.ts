import { setTimeout as pause } from "node:timers/promises";

/** A connection that waits for the write lock looks again at least every tenth of a second (SQLite). */
const FREE_MS = 120;

/** Leaves the database free between two parts of a commit, long enough for whoever waits to come in. */
export async function betweenParts(): Promise<void> {
  await pause(FREE_MS);
}
