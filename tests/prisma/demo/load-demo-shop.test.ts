import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { priceMove } from "#lib/purchasing/price-move";
import { addDays, day, daysBetween, weekStart } from "#lib/units/day";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { demoCalendar } from "#prisma/demo/demo-calendar";
import { demoParcels } from "#prisma/demo/demo-parcels";
import { fullerParcels } from "#prisma/demo/fuller-parcels";
import { loadDemoShop } from "#prisma/demo/load-demo-shop";
import { seededRandom } from "#prisma/demo/seeded-random";
import { migrateDatabase } from "#prisma/migrate";
import { plannedEventsOf } from "#prisma/records/planned-events";
import { pricesPaid } from "#prisma/records/prices-paid";
import { purchasesOf } from "#prisma/records/purchase-orders";
import { recipesOf } from "#prisma/records/recipes";
import { proveRollUps } from "#prisma/records/roll-ups";
import { shopOf } from "#prisma/records/shop";
import { offerPricesOf } from "#prisma/records/suppliers";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";

const TODAY = day("2026-11-25");
const LOADING_MS = 300_000;
const folder = mkdtempSync(join(tmpdir(), "wadding-demo-"));
let db: Database;

beforeAll(async () => {
  const file = join(folder, "demo.db");
  migrateDatabase(file);
  db = await openDatabase(file);
  await loadDemoShop(db, { today: TODAY });
}, LOADING_MS);

afterAll(async () => {
  await closeDatabase(db);
  rmSync(folder, { recursive: true });
});

describe("loadDemoShop", () => {
  it("ends yesterday, with 5 to 35 parcels in each week that was not closed", async () => {
    const parcels = await db.parcel.findMany({ select: { packedOn: true }, orderBy: { packedOn: "asc" } });
    expect(parcels.at(-1)?.packedOn).toBe("2026-11-24");
    const weeks = new Map<string, number>();
    for (const { packedOn } of parcels) {
      const start = weekStart(day(packedOn), 1);
      weeks.set(start, (weeks.get(start) ?? 0) + 1);
    }
    const whole = [...weeks].filter(
      ([start]) => !["2025-05-26", "2025-12-22", "2025-12-29", "2026-11-23"].includes(start),
    );
    for (const [, count] of whole) {
      expect(count).toBeGreaterThanOrEqual(5);
      expect(count).toBeLessThanOrEqual(35);
    }
    expect(parcels.filter((each) => each.packedOn >= "2025-12-24" && each.packedOn <= "2026-01-03")).toEqual(
      [],
    );
  });

  it("keeps the roll-ups equal to the ledger", async () => {
    expect(await proveRollUps(db)).toEqual({ equal: true, differences: [] });
  });

  it("shows something of everything in the weekly check", async () => {
    const check = await weeklyCheckOn(db, TODAY);
    const actions = new Map(check?.rows.map((row) => [row.supplyId, row.action]));
    expect(actions.get("packing-paper")).toBe("order-today");
    expect(actions.get("carton-12x12x8")).toBe("order-this-week");
    expect(actions.get("small-bubble")).toBe("on-its-way");
    expect(actions.get("household-tape")).toBe("count");
    expect(actions.get("carton-14x14x10")).toBe("no-use");
    expect([...actions.values()].filter((action) => action === "order-today").length).toBeLessThanOrEqual(2);
    expect([...actions.values()]).toContain("enough");
    expect(check?.rows.every((row) => row.onHand === null || row.onHand >= 0)).toBe(true);
  });

  it("plans two events further ahead than an order of today reaches", async () => {
    const events = await plannedEventsOf(db);
    expect(events.map(({ id, fromDay, toDay }) => [id, fromDay, toDay])).toEqual([
      ["demo-market", "2027-02-01", "2027-02-14"],
      ["demo-mugs", "2027-02-22", "2027-02-23"],
    ]);
    const suppliers = await db.supplier.findMany();
    const shop = await shopOf(db);
    const slowest = Math.max(...suppliers.map((supplier) => supplier.leadTimeDays));
    const reach = slowest + (shop?.reviewDays ?? 0) + 7 * (shop?.coverWeeks ?? 0);
    expect(daysBetween(TODAY, events[0]?.fromDay ?? TODAY)).toBeGreaterThan(reach);
  });

  it("holds mistakes put right: void, corrected, broken, returned and late parcels", async () => {
    expect(await db.parcel.count({ where: { voidedAt: { not: null } } })).toBeGreaterThan(0);
    expect(await db.parcel.count({ where: { revision: { gt: 1 } } })).toBeGreaterThan(0);
    expect(await db.parcel.count({ where: { brokenOn: { not: null } } })).toBeGreaterThan(0);
    expect(await db.parcel.count({ where: { returnedOn: { not: null } } })).toBeGreaterThan(0);
    const late = await db.parcel.findMany({ select: { packedOn: true, recordedAt: true } });
    const isLate = late.filter((each) => each.recordedAt.slice(0, 10) > addDays(day(each.packedOn), 1));
    expect(isLate.length).toBeGreaterThan(0);
  });

  it("switched from bubble to paper fill, and knows the cost of every parcel's materials", async () => {
    const calendar = demoCalendar(TODAY, "America/New_York");
    const bubble = { style: "bubble" };
    const before = await db.parcel.count({ where: { ...bubble, packedOn: { lt: calendar.switchDay } } });
    const after = await db.parcel.count({ where: { ...bubble, packedOn: { gte: calendar.switchDay } } });
    expect(before).toBeGreaterThan(5 * after);
    expect(await db.movement.count({ where: { cause: "packed", value: null } })).toBe(0);
  });

  it("holds a few parcels of two item types, with the bill of both", async () => {
    const parcels = await db.parcel.findMany({
      where: { pieces: { some: { itemTypeId: "bowl" } }, AND: { pieces: { some: { itemTypeId: "mug" } } } },
      include: { movements: { include: { recipeStep: { include: { recipe: true } } } } },
    });
    expect(parcels.length).toBeGreaterThanOrEqual(3);
    expect(parcels.length).toBeLessThanOrEqual(20);
    for (const { movements } of parcels) {
      const recipes = new Set(movements.flatMap(({ recipeStep }) => recipeStep?.recipe.itemTypeId ?? []));
      expect([...recipes].sort()).toEqual(["bowl", "mug"]);
    }
  });

  it("holds a few double boxes, the outer carton larger on every side, both taken from stock", async () => {
    const parcels = await db.parcel.findMany({
      where: { cartons: { some: { position: 1 } } },
      include: { cartons: { orderBy: { position: "asc" }, include: { supply: true } }, movements: true },
    });
    expect(parcels.length).toBeGreaterThanOrEqual(3);
    expect(parcels.length).toBeLessThanOrEqual(20);
    for (const { cartons, movements } of parcels) {
      const [outer = [], inner = []] = cartons.map(({ supply }) =>
        [supply?.lengthUm ?? 0, supply?.widthUm ?? 0, supply?.heightUm ?? 0].sort((a, b) => a - b),
      );
      expect(inner.every((side) => side > 0)).toBe(true);
      expect(outer.every((side, index) => side > (inner[index] ?? Number.POSITIVE_INFINITY))).toBe(true);
      const taken = movements.map((movement) => movement.supplyId);
      for (const { supplyId } of cartons) expect(taken).toContain(supplyId);
    }
  });

  it("holds orders in two parcels and parcels of two orders", async () => {
    const links = await db.orderParcel.findMany();
    const several = (key: "orderId" | "parcelId") => {
      const times = new Map<string, number>();
      for (const link of links) times.set(link[key], (times.get(link[key]) ?? 0) + 1);
      return [...times.values()].filter((count) => count > 1).length;
    };
    expect(several("orderId")).toBeGreaterThan(3);
    expect(several("parcelId")).toBeGreaterThan(3);
  });

  it("offers some supplies from two suppliers, with another pack, price and lead time", async () => {
    const offers = await db.offer.findMany({ include: { supplier: true } });
    const first = new Map<string, (typeof offers)[number]>();
    const pairs = offers.flatMap((offer) => {
      const other = first.get(offer.supplyId);
      first.set(offer.supplyId, other ?? offer);
      return other === undefined ? [] : [[other, offer] as const];
    });
    expect(pairs.map(([, { supplyId }]) => supplyId).sort()).toEqual([
      "carton-12x12x8",
      "packing-paper",
      "small-bubble",
    ]);
    for (const [one, other] of pairs) {
      expect(one.supplierId).not.toBe(other.supplierId);
      expect(one.packAmount).not.toBe(other.packAmount);
      expect(one.priceMinor).not.toBe(other.priceMinor);
      expect(one.supplier.leadTimeDays).not.toBe(other.supplier.leadTimeDays);
    }
  });

  it("holds an order in each state, one of them late, and receives the others, some of them late", async () => {
    const orders = await purchasesOf(db, { others: 5 });
    const open = orders.filter((order) => order.status !== "received");
    expect(open.map((order) => [order.status, order.lines.map((line) => line.supplyId)])).toEqual([
      ["draft", ["packing-paper", "tissue"]],
      ["placed", ["small-bubble"]],
      ["partly received", ["household-tape"]],
    ]);
    const rest = open.at(-1)?.lines[0]?.open;
    expect(rest?.packs).toBe(2);
    expect(rest?.expectedOn).toBe("2026-11-23");
    const lines = await db.purchaseLine.findMany();
    expect(lines.some((line) => line.closedOn !== null && line.closedOn > line.expectedOn)).toBe(true);
  });

  it("knows that prices rose, from what was offered and from what was paid", async () => {
    const prices = await offerPricesOf(db, "demo-wraps-small-bubble");
    expect(prices.map((price) => price.priceMinor)).toEqual([2_438, 2_650]);
    const tape = priceMove(await pricesPaid(db, { supplyId: "household-tape" }), null);
    expect(tape?.ratioToBefore).toBeGreaterThan(1.05);
  });

  it("invents the same parcels from the same seed", async () => {
    const recipes = await recipesOf(db);
    const calendar = demoCalendar(TODAY, "UTC");
    const parcelsOf = (seed: number) =>
      fullerParcels(demoParcels(seededRandom(seed), calendar, recipes), recipes);
    expect(parcelsOf(1)).toEqual(parcelsOf(1));
    expect(parcelsOf(2)).not.toEqual(parcelsOf(1));
  });
});
