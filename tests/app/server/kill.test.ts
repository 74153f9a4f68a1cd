import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { resolve } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { closeDatabase, openDatabase } from "#prisma/client";
import { proveRollUps } from "#prisma/records/roll-ups";
import { parcelBody, type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";

// More by a flag: WADDING_KILLS=500 npm test
const KILLS = Number(process.env.WADDING_KILLS ?? 50);
const CLIENTS = 4;
const SECONDS_A_KILL = 12;

let shop: ShopFixture;
beforeAll(async () => {
  shop = await shopFixture();
});
afterAll(() => shop.close());

/** Linear congruential generator of Numerical Recipes (from memory): the same moments in every run. */
function* moments(seed: number): Generator<number> {
  let state = seed;
  for (;;) {
    state = (state * 1_664_525 + 1_013_904_223) % 2 ** 32;
    yield state / 2 ** 32;
  }
}

async function startServer(): Promise<{ child: ChildProcess; port: number }> {
  const child = spawn(process.execPath, [resolve("tests/app/server/serving-child.mjs")], {
    env: { ...process.env, NODE_ENV: "production", WADDING_DATABASE: shop.file },
    stdio: ["ignore", "pipe", "inherit"],
  });
  let said = "";
  for await (const chunk of child.stdout) {
    said += String(chunk);
    const port = /^port (\d+)$/m.exec(said)?.[1];
    if (port !== undefined) return { child, port: Number(port) };
  }
  throw new Error(`The server ended before it answered: ${said}`);
}

/** Records parcels one after the other until the server is gone; gives each key that was acknowledged. */
async function recordUntilGone(port: number, name: string, acknowledged: string[]): Promise<void> {
  for (let index = 0; ; index += 1) {
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

describe("a server killed while parcels are recorded", () => {
  it(
    `loses no acknowledged parcel and keeps ledger, on hand and roll-ups equal (${KILLS} kills)`,
    async () => {
      const chance = moments(20_261_125);
      const acknowledged: string[] = [];
      for (let kill = 0; kill < KILLS; kill += 1) {
        const { child, port } = await startServer();
        const clients = Array.from({ length: CLIENTS }, (_, client) =>
          recordUntilGone(port, `kill-${kill}-client-${client}`, acknowledged),
        );
        const before = acknowledged.length;
        const recording = Promise.all(clients);
        const gone = recording.then(() => "gone" as const);
        while (acknowledged.length === before) {
          if ((await Promise.race([pause(2), gone])) === "gone")
            throw new Error("No parcel was acknowledged");
        }
        await pause((chance.next().value ?? 0) * 150);
        child.kill("SIGKILL");
        await once(child, "exit");
        await recording;
        const db = await openDatabase(shop.file);
        const kept = new Set((await db.parcel.findMany({ select: { id: true } })).map((row) => row.id));
        expect(acknowledged.filter((id) => !kept.has(id))).toEqual([]);
        expect((await proveRollUps(db)).differences).toEqual([]);
        expect(await db.$queryRawUnsafe("PRAGMA integrity_check")).toEqual([{ integrity_check: "ok" }]);
        await closeDatabase(db);
      }
      expect(acknowledged.length).toBeGreaterThan(KILLS);
    },
    KILLS * SECONDS_A_KILL * 1000,
  );
});
