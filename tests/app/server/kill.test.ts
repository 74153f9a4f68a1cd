import { setTimeout as pause } from "node:timers/promises";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { closeDatabase, openDatabase } from "#prisma/client";
import { type ShopFixture, shopFixture } from "../../prisma/records/shop-fixture";
import {
  expectWholeBooks,
  killServer,
  moments,
  recordUntilGone,
  sharedKills,
  startServer,
} from "./killed-server";

// 42 of 50 kills; the other 8, each of which takes several times as long, fall into imports (kill-import.test.ts).
const KILLS = sharedKills(0.84, 1);
const CLIENTS = 4;
const SECONDS_A_KILL = 60;
const SEED = 20_261_125;

let shop: ShopFixture;
beforeAll(async () => {
  shop = await shopFixture();
  // With nobody else in the file, whoever opens it after a kill has to recover it.
  await closeDatabase(shop.db);
});
afterAll(() => shop.close());

describe("a server killed while parcels are recorded", () => {
  it(
    `loses no acknowledged parcel and keeps ledger, on hand and roll-ups equal (${KILLS} kills, seed ${SEED})`,
    async () => {
      const chance = moments(SEED);
      const acknowledged: string[] = [];
      let starting = startServer(shop.file);
      for (let kill = 0; kill < KILLS; kill += 1) {
        const server = await starting;
        const before = acknowledged.length;
        const recording = Promise.all(
          Array.from({ length: CLIENTS }, (_, client) =>
            recordUntilGone(server.port, `kill-${kill}-client-${client}`, acknowledged),
          ),
        );
        const gone = recording.then(() => "gone" as const);
        while (acknowledged.length === before) {
          if ((await Promise.race([pause(2), gone])) === "gone")
            throw new Error("No parcel was acknowledged");
        }
        await pause(chance() * 150);
        await killServer(server);
        await recording;
        // A server opens its database with its first request, so the next one can come up meanwhile.
        starting = startServer(shop.file);
        const db = await openDatabase(shop.file);
        await expectWholeBooks(db, acknowledged);
        await closeDatabase(db);
      }
      await killServer(await starting);
      expect(acknowledged.length).toBeGreaterThan(KILLS);
    },
    KILLS * SECONDS_A_KILL * 1000,
  );
});
