import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { AMOUNT_PER_UNIT } from "#lib/units/amount";
import { closeDatabase, openDatabase } from "#prisma/client";
import { saveRateCards } from "#prisma/records/rate-cards";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { startServer } from "../../set-up/start-server.mjs";
import { generatedShop } from "../foundation/generated-shop";
import { benchCard } from "../postage/bench-card";

const PARCELS = 100_000;
const RUNS = 15;
const TARGET_MS = 150;
const MEDIAN = 0.5;
const ZONES = ["zone-0", "zone-1", "zone-2", "zone-3"];

/** How long the screens of paper and bubble take over two years of 100,000 parcels: the first time, and from then on. */
export async function pageSpeed(): Promise<Measurement[]> {
  const folder = mkdtempSync(join(tmpdir(), "wadding-bench-"));
  try {
    const file = join(folder, "shop.db");
    await generatedShop(file, PARCELS);
    await makeComparable(file);
    const server = await startServer(file);
    try {
      return [
        ...(await timed(`${server.url}/paper-or-bubble`, "Paper or bubble, with its plan")),
        ...(await timed(`${server.url}/paper-or-bubble/item-3`, "one kind of parcel, with its charts")),
      ];
    } finally {
      await server.stop();
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function timed(url: string, name: string): Promise<Measurement[]> {
  const page = async () => {
    const began = performance.now();
    const answer = await fetch(url);
    if (!answer.ok) throw new Error(`${url} answered ${answer.status}`);
    await answer.text();
    return performance.now() - began;
  };
  const first = await page();
  const warm: number[] = [];
  for (let run = 0; run < RUNS; run += 1) warm.push(await page());
  const of = (what: string, value: number, target: number | null) =>
    measurement({ area: "cushioning", name: `${name}, 100,000 parcels, ${what}`, value, unit: "ms", target });
  return [of("the first time", first, null), of("later (median)", nearestRank(warm, MEDIAN), TARGET_MS)];
}

/** Gives each item type a weight and a second card, and the shop a rate card, so that there is something to compare. */
async function makeComparable(file: string): Promise<void> {
  const db = new Database(file);
  db.transaction(() => {
    db.exec(`UPDATE "ItemType" SET "massMg" = 300000 + 150000 * "position"`);
    db.exec(`UPDATE "Supply" SET "massMg" = CASE WHEN "kind" = 'carton' THEN 240000 ELSE 20000 END`);
    db.exec(
      `UPDATE "Supply" SET "lengthUm" = 250000, "widthUm" = 220000, "heightUm" = 200000 WHERE "kind" = 'carton'`,
    );
    db.exec(
      `UPDATE "Supply" SET "kind" = 'bubble', "massMg" = 6000 WHERE "kind" = 'paper' AND "position" % 6 = 4`,
    );
    db.exec(`INSERT INTO "Recipe" ("id", "itemTypeId", "style", "effectiveFrom", "recordedAt")
      SELECT "id" || '-bubble', "itemTypeId", 'bubble', "effectiveFrom", "recordedAt" FROM "Recipe"`);
    db.exec(`INSERT INTO "RecipeCarton" ("recipeId", "upTo", "supplyId")
      SELECT "recipeId" || '-bubble', "upTo", "supplyId" FROM "RecipeCarton"`);
    // On bubble the fourth step's sheets give way to twice as much of the fifth supply.
    db.exec(`INSERT INTO "RecipeStep" ("id", "recipeId", "position", "words", "supplyId", "amount", "typedValue", "typedUnit", "per")
      SELECT "id" || '-bubble', "recipeId" || '-bubble', "position", "words", "supplyId",
        CASE WHEN "position" = 3 THEN ${AMOUNT_PER_UNIT} ELSE "amount" * (1 + ("position" = 4)) END, "typedValue", "typedUnit", "per"
      FROM "RecipeStep"`);
  })();
  db.close();
  const opened = await openDatabase(file);
  try {
    const card = benchCard();
    const bands = card.bands.map((band) => ({
      ...band,
      steps: band.steps.map((step) => ({ ...step, prices: step.prices.slice(0, ZONES.length) })),
    }));
    const own = { ...card, bands, zones: ZONES };
    await saveRateCards(opened, [{ id: "bench", card: own, source: null, readOn: null }], {
      measures: "imperial",
    });
  } finally {
    await closeDatabase(opened);
  }
}
