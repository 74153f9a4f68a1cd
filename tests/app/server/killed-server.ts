import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { resolve } from "node:path";
import { expect } from "vitest";
import type { Database } from "#prisma/client";
import { proveRollUps } from "#prisma/records/roll-ups";
import { parcelBody } from "../../prisma/records/shop-fixture";

/** Kills of all kill tests together. More by a flag: WADDING_KILLS=500 npm test */
const KILLS = Number(process.env.WADDING_KILLS ?? 50);

/** A kill test's share of the kills, and never fewer than `least`. */
export function sharedKills(share: number, least: number): number {
  return Math.max(least, Math.round(KILLS * share));
}

/** Linear congruential generator of Numerical Recipes (from memory): the same moments in every run. */
export function moments(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    return state / 2 ** 32;
  };
}

/** A built server in a process of its own. */
export type ServerProcess = { readonly child: ChildProcess; readonly port: number };

/**
 * Starts the server over a database and waits until it answers.
 *
 * @param file path of the database
 * @param env further variables of its environment
 */
export async function startServer(
  file: string,
  env: Readonly<Record<string, string>> = {},
): Promise<ServerProcess> {
  const child = spawn(process.execPath, [resolve("tests/app/server/serving-child.mjs")], {
    env: { ...process.env, NODE_ENV: "production", WADDING_DATABASE: file, ...env },
    stdio: ["ignore", "pipe", "inherit", "ipc"],
  });
  let said = "";
  for await (const chunk of child.stdout ?? []) {
    said += String(chunk);
    const port = /^port (\d+)$/m.exec(said)?.[1];
    if (port !== undefined) return { child, port: Number(port) };
  }
  throw new Error(`The server ended before it answered: ${said}`);
}

/** Kills the server as a power cut would, and waits until it is gone. */
export async function killServer({ child }: ServerProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = once(child, "exit");
  child.kill("SIGKILL");
  await gone;
}

/**
 * Records parcels one after the other until the server is gone or nobody wants more.
 *
 * @param port of the server
 * @param name begins the keys
 * @param acknowledged gets each key that was acknowledged
 * @param isWanted asked before each parcel
 */
export async function recordUntilGone(
  port: number,
  name: string,
  acknowledged: string[],
  isWanted: () => boolean = () => true,
): Promise<void> {
  for (let index = 0; isWanted(); index += 1) {
    const id = `${name}-${index}`;
    let status: number;
    try {
      const answer = await fetch(`http://127.0.0.1:${port}/api/parcels`, {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(parcelBody(id)),
      });
      await answer.arrayBuffer();
      status = answer.status;
    } catch (error) {
      // The connection broke: the server is gone, and this parcel was not acknowledged.
      if (error instanceof TypeError) return;
      throw error;
    }
    if (status !== 201) throw new Error(`Recording ${id} was answered ${status}`);
    acknowledged.push(id);
  }
}

/** Holds the books against what was promised: each acknowledged parcel is there, and all sums are equal. */
export async function expectWholeBooks(db: Database, acknowledged: readonly string[]): Promise<void> {
  const rows = await db.parcel.findMany({ where: { source: null }, select: { id: true } });
  const kept = new Set(rows.map((row) => row.id));
  expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
  expect((await proveRollUps(db)).differences).toEqual([]);
  expect(await db.$queryRawUnsafe("PRAGMA integrity_check")).toEqual([{ integrity_check: "ok" }]);
  expect(await db.$queryRawUnsafe("PRAGMA foreign_key_check")).toEqual([]);
}
