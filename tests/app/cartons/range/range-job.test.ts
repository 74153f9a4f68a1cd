import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { isWorking, startRange } from "#app/cartons/range/range-job.ts";
import type { RangeQuestion } from "#app/cartons/range/range-question.ts";
import { QUICK_EFFORT } from "#lib/cartons/fit/fit-effort";
import { day } from "#lib/units/day";
import { rangeKept } from "#prisma/records/carton-ranges";
import { carton, IN, MUG, MUG_TERMS } from "../../../lib/cartons/choice/mug-bench";
import { type ShopFixture, shopFixture } from "../../../prisma/records/shop-fixture";

const NOW = "2026-03-31T10:00:00.000Z";
const CLEARANCE = { wallsUm: IN, baseUm: IN, topUm: IN };
const { fill, tape, bulgeUm } = MUG_TERMS;

/** Five mugs a year; today's is the 12 in cube, and the 8 in one, which takes less fill, could be bought. */
const question = (hash: string, change: Partial<RangeQuestion["task"]> = {}): RangeQuestion => ({
  hash,
  parcels: 5,
  candidates: [],
  task: {
    loads: [{ load: MUG, parcels: 5, clearance: CLEARANCE }],
    offered: [carton("cube-12", [12, 12, 12], 130), carton("cube-8", [8, 8, 8], 80)],
    terms: { fill, tape, bulgeUm, effort: QUICK_EFFORT, clearance: CLEARANCE },
    postage: { card: null, zones: [] },
    shipDay: day("2026-03-31"),
    today: [0],
    onHand: [10, null],
    most: 2,
    seconds: 5,
    ...change,
  },
});

describe("working ranges out in the background", () => {
  let shop: ShopFixture;
  beforeAll(async () => {
    shop = await shopFixture();
  });
  afterAll(() => shop.close());

  const ended = async (hash: string) => {
    await vi.waitFor(() => expect(isWorking(hash)).toBe(false), { timeout: 170_000, interval: 50 });
    return (await rangeKept(shop.db, hash))?.range;
  };

  it("keeps today's range and each of the best, and is at it once though it was asked twice", async () => {
    const now = vi.fn(() => NOW);
    startRange(shop.db, question("good"), now);
    startRange(shop.db, question("good"), now);
    expect(isWorking("good")).toBe(true);
    const range = await ended("good");
    expect(range?.failed).toBeNull();
    expect(range?.points.map(({ most, chosen }) => [most, chosen])).toEqual([
      [1, [1]],
      [2, [1]],
    ]);
    expect(range?.today?.value).toBeGreaterThan(range?.points[0]?.value ?? Number.POSITIVE_INFINITY);
    expect([range?.earns.length, range?.steps.length]).toEqual([2, 2]);
    expect(now).toHaveBeenCalledTimes(2);
  });

  it("tells why it ended early where the question can't be worked out", async () => {
    startRange(shop.db, question("bad", { today: [7] }), () => NOW);
    expect((await ended("bad"))?.failed).toMatch(/\S/);
  });

  it("tells that keeping failed on the way, though the next try to keep succeeds", async () => {
    let tries = 0;
    startRange(shop.db, question("unkept"), () => {
      tries += 1;
      if (tries === 1) throw new Error("the disk was full");
      return NOW;
    });
    expect((await ended("unkept"))?.failed).toBe("the disk was full");
  });
});
