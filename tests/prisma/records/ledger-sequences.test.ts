import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, amount } from "#lib/units/amount";
import { addDays, type Day } from "#lib/units/day";
import { endOfDay, instantOfTime, shopDay, startOfDay } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import { recordCount } from "#prisma/records/counts";
import { saveItemType } from "#prisma/records/item-types";
import { reverseMovement } from "#prisma/records/movements";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { correctParcel, markBroken, returnParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { recordReceipt } from "#prisma/records/receipts";
import { proveRollUps } from "#prisma/records/roll-ups";
import { recordSpoilage } from "#prisma/records/spoilage";
import { stockOf } from "#prisma/records/supplies";
import { parcelBody, shopFixture } from "./shop-fixture";
import { type ToldStock, toldDays, toldOnHand } from "./told-stock";

const ZONE = "America/New_York";
const START = Date.UTC(2026, 2, 1, 14, 7);
/** The clock between two actions, milliseconds: some days have three actions, and a summer time begins on 8 March. */
const BETWEEN = 7 * 3_600_000;
const SUPPLIES = ["paper", "bubble", "carton-8"];
// Many short sequences of one supply are in ledger.test.ts.
const RUNS = 3;
const FEWEST = 90;
const MOST = 120;
const PROVED_EVERY = 25;

type Kind = "parcel" | "void" | "correct" | "break" | "return" | "count" | "spoil" | "receive" | "reverse";

// What a person can do, in any order: `back` days ago (0: now), an amount in halves, thirds and quarters.
const action = fc.record({
  kind: fc.oneof(
    { weight: 4, arbitrary: fc.constant<Kind>("parcel") },
    {
      weight: 8,
      arbitrary: fc.constantFrom<Kind>(
        "void",
        "correct",
        "break",
        "return",
        "count",
        "spoil",
        "receive",
        "reverse",
      ),
    },
  ),
  back: fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 9 })),
  twelfths: fc.integer({ min: 1, max: 60 }),
  pick: fc.nat(200),
  isFlag: fc.boolean(),
});
type Action = typeof action extends fc.Arbitrary<infer One> ? One : never;

/** One action with all that its record function needs. */
type Step = Action & {
  readonly db: Database;
  readonly told: ToldStock;
  readonly index: number;
  readonly by: { readonly device: string; readonly now: string };
  readonly onDay: Day;
  /** When it takes effect: now, or at the end of an earlier day. */
  readonly at: string;
  readonly supplyId: string;
  readonly used: ReturnType<typeof amount>;
  /** A parcel that was recorded, in force or void. */
  readonly parcelId: string;
};

const wanted = (outcome: { readonly kind: string }, ...kinds: string[]) =>
  expect(kinds).toContain(outcome.kind);

function bodyOf(id: string, { onDay, used, pick, isFlag }: Step): ParcelBody {
  const line = { recipeStepId: null, typedValue: "x", typedUnit: "twelfths" };
  const pieces = [
    { itemTypeId: "mug", pieces: 1 + (pick % 3) },
    ...(isFlag ? [{ itemTypeId: "plate", pieces: 2 }] : []),
  ];
  return parcelBody(id, {
    packedOn: onDay,
    style: isFlag ? "bubble" : "paper",
    pieces,
    cartons: pick % 4 === 0 ? [] : Array.from({ length: 1 + (pick % 2) }, () => ({ supplyId: "carton-8" })),
    lines: ["paper", "bubble", "paper"]
      .slice(pick % 3)
      .map((supplyId) => ({ ...line, supplyId, amount: used })),
    orders: isFlag ? [{ reference: `o${pick}` }, { reference: `o${pick + 1}` }] : [],
    zoneId: pick % 5 === 0 ? null : "near",
    unusual: pick % 7 === 0,
    countedSameDay: pick % 6 === 0 ? "before" : "after",
  });
}

function tellParcel({ told, by, onDay }: Step, body: ParcelBody): void {
  const isToday = shopDay(instantOfTime(Date.parse(by.now)), ZONE) === onDay;
  const late = body.countedSameDay === "before" ? startOfDay(onDay, ZONE) : endOfDay(onDay, ZONE);
  const at = isToday ? by.now : late;
  const cartons = body.cartons.map(() => ({ supplyId: "carton-8", at, amount: -AMOUNT_PER_UNIT }));
  const lines = body.lines.map((line) => ({ supplyId: line.supplyId, at, amount: -line.amount }));
  const pieces = body.pieces.reduce((sum, part) => sum + part.pieces, 0);
  told.parcels.set(body.id, { moves: [...lines, ...cartons], packedOn: onDay, pieces });
}

/** Remembers a movement under its number, so that it can be reversed later. */
async function tellOther({ db, told, supplyId, at }: Step, cause: string, moved: number): Promise<void> {
  const where = { supplyId, cause, reversesId: null, countId: null };
  const newest = await db.movement.findFirstOrThrow({ where, orderBy: { id: "desc" } });
  told.others.set(newest.id, { supplyId, at, amount: moved });
}

const TAKE: Readonly<Record<Kind, (step: Step) => Promise<void>>> = {
  async parcel(step) {
    const body = bodyOf(`p${step.index}`, step);
    wanted(await recordParcel(step.db, body, step.by), "recorded");
    tellParcel(step, body);
    wanted(await recordParcel(step.db, body, step.by), "already-recorded");
  },
  async void({ db, told, by, parcelId }) {
    const isStanding = told.parcels.delete(parcelId);
    wanted(
      await voidParcel(db, parcelId, "undone", by),
      ...(isStanding ? ["voided"] : ["already-void", "not-found"]),
    );
  },
  async correct(step) {
    const body = bodyOf(step.parcelId, step);
    const isStanding = step.told.parcels.has(step.parcelId);
    wanted(
      await correctParcel(step.db, body, step.by),
      ...(isStanding ? ["corrected"] : ["void", "not-found"]),
    );
    if (isStanding) tellParcel(step, body);
  },
  async break({ db, onDay, parcelId }) {
    wanted(
      await markBroken(db, parcelId, { cause: "unknown", on: onDay, note: "chipped" }),
      "marked",
      "not-found",
    );
  },
  async return(step) {
    const lines = [{ supplyId: step.supplyId, amount: step.used }];
    const outcome = await returnParcel(step.db, step.parcelId, { on: step.onDay, lines }, step.by);
    if (outcome.kind === "returned") await tellOther(step, "returned", step.used);
  },
  async count({ db, told, by, index, back, onDay, supplyId, used }) {
    const countedAt = back === 0 ? by.now : `${onDay}T17:00:00.${String(index).padStart(3, "0")}Z`;
    const count = {
      id: `c${index}`,
      supplyId,
      amount: used,
      method: "number",
      typed: "x",
      note: null,
    } as const;
    wanted(await recordCount(db, { ...count, countedAt }, by), "counted");
    told.counts.push({ supplyId, at: countedAt, amount: used });
  },
  async spoil(step) {
    const { db, supplyId, used, onDay, by } = step;
    const loss = { supplyId, amount: used, typedValue: "x", typedUnit: "twelfths", words: "torn", on: onDay };
    wanted(await recordSpoilage(db, loss, by), "spoilt");
    await tellOther(step, "spoilt", -used);
  },
  async receive(step) {
    const { db, by, index, onDay, supplyId, used, pick, isFlag } = step;
    const pack = {
      packs: 1 + (pick % 3),
      packAmount: used,
      packTyped: "x",
      priceMinor: pick % 5 === 0 ? null : pick,
    };
    const terms = {
      currency: "USD",
      rateMillionths: 1_000_000,
      taxIncluded: true,
      deliveryMinor: 3,
      taxMinor: 0,
    };
    const lines = [{ id: `r${index}-1`, supplyId, purchaseLineId: null, ...pack }];
    const head = { id: `r${index}`, supplierId: null, receivedOn: onDay, note: null } as const;
    const kind = isFlag ? ("saved" as const) : ("paid" as const);
    wanted(await recordReceipt(db, { ...head, ...terms, kind, lines }, by), "received");
    await tellOther(step, isFlag ? "saved" : "received", pack.packs * used);
  },
  async reverse({ db, told, by, pick }) {
    const movement = await db.movement.findFirst({
      where: { cause: { in: ["spoilt", "saved", "received", "returned"] }, reversesId: null },
      orderBy: { id: "asc" },
      skip: pick % Math.max(1, told.others.size),
    });
    if (movement === null) return;
    const isStanding = told.others.delete(movement.id);
    wanted(await reverseMovement(db, movement.id, "wrong", by), isStanding ? "reversed" : "already-reversed");
  },
};

function stepOf(db: Database, told: ToldStock, each: Action, index: number): Step {
  const now = instantOfTime(START + index * BETWEEN);
  const onDay = addDays(shopDay(now, ZONE), -each.back);
  return {
    ...each,
    db,
    told,
    index,
    by: { device: "test", now },
    onDay,
    at: each.back === 0 ? now : endOfDay(onDay, ZONE),
    supplyId: SUPPLIES[each.pick % SUPPLIES.length] ?? "paper",
    used: amount((each.twelfths * AMOUNT_PER_UNIT) / 12),
    parcelId: `p${each.pick % Math.max(1, index)}`,
  };
}

async function expectEqualBooks(db: Database, told: ToldStock): Promise<void> {
  const stock = new Map((await stockOf(db)).map((row) => [row.supplyId, row.amount ?? 0]));
  const sums = await db.movement.groupBy({ by: ["supplyId"], _sum: { amount: true } });
  for (const supplyId of SUPPLIES) {
    const sum = sums.find((row) => row.supplyId === supplyId)?._sum.amount ?? 0n;
    expect(Number(sum)).toBe(toldOnHand(told, supplyId));
    expect(stock.get(supplyId) ?? 0).toBe(toldOnHand(told, supplyId));
  }
  const days = await db.parcelDay.groupBy({
    by: ["day"],
    _sum: { parcels: true, pieces: true },
    orderBy: { day: "asc" },
  });
  const kept = days.map(({ day, _sum }) => ({ day, parcels: _sum.parcels ?? 0, pieces: _sum.pieces ?? 0 }));
  expect(kept.filter((row) => row.parcels !== 0 || row.pieces !== 0)).toEqual(toldDays(told));
  expect((await proveRollUps(db)).differences).toEqual([]);
}

async function take(actions: readonly Action[]): Promise<void> {
  const shop = await shopFixture(ZONE);
  try {
    const plate = await shop.db.itemType.findUniqueOrThrow({ where: { id: "mug" } });
    await saveItemType(shop.db, { ...plate, id: "plate", name: "Plate", position: 1 });
    const told: ToldStock = { parcels: new Map(), others: new Map(), counts: [] };
    for (const [index, each] of actions.entries()) {
      await TAKE[each.kind](stepOf(shop.db, told, each, index));
      if (index % PROVED_EVERY === PROVED_EVERY - 1) await expectEqualBooks(shop.db, told);
    }
    await expectEqualBooks(shop.db, told);
  } finally {
    await shop.close();
  }
}

describe("any sequence of actions", () => {
  it(`keeps on hand, movements and roll-ups equal to what was told (${RUNS} runs of ${FEWEST} to ${MOST} actions)`, async () => {
    const actions = fc.array(action, { minLength: FEWEST, maxLength: MOST, size: "max" });
    // A failure is still said where making it smaller would take too long. Runs left out are one as well.
    const limits = { interruptAfterTimeLimit: 150_000, markInterruptAsFailure: true };
    await fc.assert(fc.asyncProperty(actions, take), { numRuns: RUNS, ...limits });
  });
});
