import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ShopNow } from "#app/_parts/shop-now.ts";
import type { CushionAnswer, KindAnswer } from "#app/paper-or-bubble/cushion-answer.ts";
import { cushionAnswer } from "#app/paper-or-bubble/cushion-answer.ts";
import { readCompared } from "#app/paper-or-bubble/read-compared.ts";
import type { CushionStyle } from "#lib/packing/recipe-version";
import { addDays, day } from "#lib/units/day";
import { instant } from "#lib/units/instant";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { loadDemoShop } from "#prisma/demo/load-demo-shop";
import { migrateDatabase } from "#prisma/migrate";
import { shopOf } from "#prisma/records/shop";

const TODAY = day("2026-11-25");
const LOADING_MS = 300_000;
const POUND_MG = 453_592.37;
const folder = mkdtempSync(join(tmpdir(), "wadding-cushion-"));
let db: Database;
let now: ShopNow;
let answer: CushionAnswer;

beforeAll(async () => {
  const file = join(folder, "demo.db");
  migrateDatabase(file);
  db = await openDatabase(file);
  await loadDemoShop(db, { today: TODAY });
  const shop = await shopOf(db);
  if (shop === null) throw new RangeError("the demo has a shop");
  now = { db, shop, today: TODAY, now: instant("2026-11-25T12:00:00.000Z"), version: "" };
  answer = (await readCompared(now, {})).answer;
}, LOADING_MS);

afterAll(async () => {
  await closeDatabase(db);
  rmSync(folder, { recursive: true });
});

function kindOf(itemTypeId: string, { kinds }: Pick<CushionAnswer, "kinds"> = answer): KindAnswer {
  const found = kinds.find(
    ({ pieces: [piece, ...more] }) =>
      piece?.itemTypeId === itemTypeId && piece.pieces === 1 && more.length === 0,
  );
  if (found === undefined) throw new RangeError(`the demo sends ${itemTypeId}`);
  return found;
}

function costIn(kind: KindAnswer, style: CushionStyle) {
  const cost = kind.costs.find(({ way }) => way.style === style);
  if (cost === undefined) throw new RangeError(`the demo has a card on ${style}`);
  return cost;
}

const cheaper = (itemTypeId: string, of = answer) => kindOf(itemTypeId, of).comparisons[0]?.cheaper.way.style;

/** How many parcels of the last half year went to a zone, counted one by one and not by the roll-up. */
async function sharesByHand(): Promise<Record<string, number>> {
  const sent = await db.parcel.findMany({
    where: { packedOn: { gte: addDays(TODAY, -182), lte: TODAY }, voidedAt: null },
    select: { zoneId: true },
  });
  const count = (zone: string) => sent.filter(({ zoneId }) => zoneId === zone).length;
  const all = count("near") + count("far") + count("abroad");
  return { near: count("near") / all, far: count("far") / all, abroad: count("abroad") / all };
}

/** The demo's rates, cents: a start and so much a pound. */
const price = (zone: "near" | "far" | "abroad", pounds: number) =>
  ({ near: 590 + 85 * pounds, far: 690 + 160 * pounds, abroad: 1_490 + 520 * pounds })[zone];

function meanPrice(shares: Record<string, number>, pounds: number): number {
  return (["near", "far", "abroad"] as const).reduce(
    (sum, zone) => sum + (shares[zone] ?? 0) * price(zone, pounds),
    0,
  );
}

// Amounts: the recipes that the demo starts with (common practice, no source). Prices: its offers, one pack, by what is in
// it. All of the demo is invented; the sums are done here by hand.
const TISSUE = 1_750 / 480;
const PAPER = 3_150 / 416;
const SMALL_BUBBLE = 2_650 / 186;
const LARGE_BUBBLE = 3_150 / 125;
const STRIP = 1_150 / 2_592;
const TAPE_FOOT = 1_850 / 1_980;

describe("the demo shop", () => {
  it("has the framed tile worked out line by line: bubble", async () => {
    const shares = await sharesByHand();
    const tile = kindOf("framed-tile");
    // On both: a sheet of tissue, 4 pieces of small and 2 sq ft of large bubble, 4 strips, 99 in of tape, a carton.
    const both =
      TISSUE + 4 * SMALL_BUBBLE + 2 * LARGE_BUBBLE + 4 * STRIP + (99 / 12) * TAPE_FOOT + 2_500 / 25;
    const onPaper = both + 6 * PAPER;
    const onBubble = both + 5.02 * LARGE_BUBBLE;
    expect(costIn(tile, "paper").materialsMinor).toBeCloseTo(onPaper, 2);
    expect(costIn(tile, "bubble").materialsMinor).toBeCloseTo(onBubble, 2);
    // 900 g and the packing: on paper 1,400 g by the bill, about 3 lb (1,361 g); on bubble 1,277 g, under it.
    const upTo3 = costIn(tile, "paper").way.weight;
    expect(upTo3?.predictedMg).toBeGreaterThan(3 * POUND_MG);
    expect(costIn(tile, "bubble").way.weight?.predictedMg).toBeLessThan(3 * POUND_MG);
    const stayed = await shareUnder3("framed-tile", "paper", "carton-12x12x4");
    const chance = oddsUpTo(tile, "paper", "3");
    expect(Math.abs(chance - stayed)).toBeLessThan(0.06);
    expect(oddsUpTo(tile, "bubble", "3")).toBeGreaterThan(0.99);
    const paper = onPaper + chance * meanPrice(shares, 3) + (1 - chance) * meanPrice(shares, 4);
    const bubble = onBubble + meanPrice(shares, 3);
    expect(costIn(tile, "paper").totalMinor).toBeCloseTo(paper, 0);
    expect(Math.abs(costIn(tile, "bubble").totalMinor - bubble)).toBeLessThan(1);
    expect(cheaper("framed-tile")).toBe("bubble");
    expect(Math.abs((tile.comparisons[0]?.savesMinor ?? 0) - (paper - bubble))).toBeLessThan(1.5);
  });

  it("has the lamp chimney worked out line by line: paper", async () => {
    const shares = await sharesByHand();
    const chimney = kindOf("lamp-chimney");
    // On both: a sheet of paper into it, a sheet of tissue, 5 pieces of small bubble, 3 strips, 75 in of tape, a carton.
    const both = PAPER + TISSUE + 5 * SMALL_BUBBLE + 3 * STRIP + (75 / 12) * TAPE_FOOT + 3_000 / 25;
    const onPaper = both + 12 * PAPER;
    const onBubble = both + 9.37 * LARGE_BUBBLE;
    expect(costIn(chimney, "paper").materialsMinor).toBeCloseTo(onPaper, 2);
    expect(costIn(chimney, "bubble").materialsMinor).toBeCloseTo(onBubble, 2);
    // 809 g and 556 g by the bill: both over 1 lb and well under 2 lb, so both pay 2 lb.
    for (const [style, materials] of [
      ["paper", onPaper],
      ["bubble", onBubble],
    ] as const) {
      expect(oddsUpTo(chimney, style, "2")).toBeGreaterThan(0.999);
      const total = materials + meanPrice(shares, 2);
      expect(Math.abs(costIn(chimney, style).totalMinor - total)).toBeLessThan(0.5);
    }
    expect(cheaper("lamp-chimney")).toBe("paper");
    expect(chimney.comparisons[0]?.savesMinor).toBeCloseTo(9.37 * LARGE_BUBBLE - 12 * PAPER, 1);
  });

  it("is answered otherwise when bubble gets dearer or cheaper", async () => {
    const { ground } = await readCompared(now, {});
    const at = (cents: number) =>
      cushionAnswer(ground, { prices: new Map([["large-bubble", cents * 10_000]]), cardId: null });
    // The tile takes 5.02 sq ft more on bubble, against 6 sheets: it turns where both totals meet.
    const saved = kindOf("framed-tile").comparisons[0]?.savesMinor ?? 0;
    const turns = LARGE_BUBBLE + saved / 5.02;
    expect(cheaper("framed-tile", at(turns - 0.1))).toBe("bubble");
    expect(cheaper("framed-tile", at(turns + 0.1))).toBe("paper");
    const chimneyTurns = (12 * PAPER) / 9.37;
    expect(cheaper("lamp-chimney", at(chimneyTurns - 0.1))).toBe("bubble");
    expect(cheaper("lamp-chimney", at(chimneyTurns + 0.1))).toBe("paper");
  });

  it("is answered otherwise by a rate card with other steps", async () => {
    const { ground } = await readCompared(now, {});
    const [main] = ground.cards;
    if (main === undefined) throw new RangeError("the demo has a rate card");
    // Every fifth pound: no step lies between the tile on paper and on bubble any more.
    const bands = main.card.bands.map((band) => ({
      ...band,
      steps: band.steps.filter((_, at) => (at + 1) % 5 === 0),
    }));
    const coarse = { ...main, id: "coarse", card: { ...main.card, bands } };
    const found = cushionAnswer(
      { ...ground, cards: [...ground.cards, coarse] },
      { prices: new Map(), cardId: "coarse" },
    );
    expect(cheaper("framed-tile", found)).toBe("paper");
    expect(kindOf("framed-tile", found).comparisons[0]?.decidedBy).toBe("materials");
  });
});

function oddsUpTo(kind: KindAnswer, style: CushionStyle, pounds: string): number {
  const step = costIn(kind, style).postage?.steps.find(
    ({ step: { band, stepAt } }) => band.steps[stepAt]?.upTo.text === pounds,
  );
  return step?.upTo ?? 0;
}

/** What the scale said of such parcels: the share up to 3 lb. */
async function shareUnder3(itemTypeId: string, style: CushionStyle, cartonId: string): Promise<number> {
  const sent = await db.parcel.findMany({
    where: {
      style,
      voidedAt: null,
      unusual: false,
      scaleMg: { not: null },
      pieces: { every: { itemTypeId, pieces: 1 } },
      cartons: { every: { supplyId: cartonId, cutHeightUm: null } },
    },
    select: { scaleMg: true },
  });
  const under = sent.filter(({ scaleMg }) => (scaleMg ?? 0) <= 3 * POUND_MG + 0.5).length;
  return under / sent.length;
}
