import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { AMOUNT_PER_UNIT, type Amount, amount } from "#lib/units/amount";
import { type Day, day } from "#lib/units/day";
import { endOfDay } from "#lib/units/instant";
import type { Database } from "#prisma/client";
import { recordCount } from "#prisma/records/counts";
import type { Recorder } from "#prisma/records/ledger";
import type { ParcelBody } from "#prisma/records/parcel-body";
import { correctParcel, voidParcel } from "#prisma/records/parcel-corrections";
import { recordParcel } from "#prisma/records/parcels";
import { recordReceipt } from "#prisma/records/receipts";
import { proveRollUps } from "#prisma/records/roll-ups";
import { recordSpoilage } from "#prisma/records/spoilage";
import { stockOf } from "#prisma/records/supplies";
import { parcelBody, shopFixture } from "./shop-fixture";

// What a person can do, in any order: `back` days ago (0: now), an amount in halves, thirds and quarters.
const action = fc.record({
  kind: fc.constantFrom<Kind>("parcel", "void", "correct", "count", "spoil", "receive"),
  back: fc.integer({ min: 0, max: 6 }),
  twelfths: fc.integer({ min: 1, max: 60 }),
  pick: fc.nat(20),
});

type Entry = { readonly at: string; readonly amount: number };

/** On hand as the rules say it: the latest count, and what took effect after it. */
function expectedOnHand(entries: Iterable<Entry>, counts: readonly Entry[]): number {
  const latest = counts.reduce<Entry | null>(
    (best, count) => (best === null || count.at >= best.at ? count : best),
    null,
  );
  let sum = latest?.amount ?? 0;
  for (const entry of entries) if (latest === null || entry.at > latest.at) sum += entry.amount;
  return sum;
}

/** What the ledger should hold: parcels in force, other movements, counts. */
type Told = { readonly parcels: Map<string, Entry>; readonly others: Entry[]; readonly counts: Entry[] };

/** One action with all that its record function needs. */
type Step = {
  readonly db: Database;
  readonly told: Told;
  readonly by: Recorder;
  readonly index: number;
  readonly onDay: Day;
  /** When it takes effect: now, or at the end of an earlier day. */
  readonly at: string;
  readonly used: Amount;
  readonly line: ParcelBody["lines"][number];
  readonly body: ParcelBody;
  /** A parcel in force, if there is one. */
  readonly picked: string | undefined;
  readonly price: number;
};

type Kind = "parcel" | "void" | "correct" | "count" | "spoil" | "receive";

const TAKE: Readonly<Record<Kind, (step: Step) => Promise<void>>> = {
  async parcel({ db, told, by, at, used, body }) {
    await recordParcel(db, body, by);
    told.parcels.set(body.id, { at, amount: -used });
  },
  async void({ db, told, by, picked }) {
    if (picked === undefined) return;
    await voidParcel(db, picked, "undone", by);
    told.parcels.delete(picked);
  },
  async correct({ db, told, by, at, used, body, picked }) {
    if (picked === undefined) return;
    await correctParcel(db, { ...body, id: picked }, by);
    told.parcels.set(picked, { at, amount: -used });
  },
  async count({ db, told, by, index, onDay, at, used }) {
    const countedAt = at === by.now ? at : `${onDay}T13:00:00.${String(index).padStart(3, "0")}Z`;
    const said = { supplyId: "paper", amount: used, method: "number", typed: "x", note: null } as const;
    await recordCount(db, { ...said, id: `c${index}`, countedAt }, by);
    told.counts.push({ at: countedAt, amount: used });
  },
  async spoil({ db, told, by, onDay, at, used, line }) {
    const { supplyId, typedValue, typedUnit } = line;
    await recordSpoilage(db, { supplyId, amount: used, typedValue, typedUnit, words: "torn", on: onDay }, by);
    told.others.push({ at, amount: -used });
  },
  async receive({ db, told, by, index, onDay, at, used, price }) {
    const received = {
      id: `r${index}-1`,
      supplyId: "paper",
      purchaseLineId: null,
      packs: 2,
      packAmount: used,
      packTyped: "x",
      priceMinor: price,
    };
    await recordReceipt(
      db,
      {
        id: `r${index}`,
        supplierId: null,
        receivedOn: onDay,
        kind: "paid",
        currency: "USD",
        rateMillionths: 1_000_000,
        taxIncluded: true,
        deliveryMinor: 3,
        taxMinor: 0,
        note: null,
        lines: [received],
      },
      by,
    );
    told.others.push({ at, amount: 2 * used });
  },
};

type Action = typeof action extends fc.Arbitrary<infer One> ? One : never;

function stepOf(db: Database, told: Told, { back, twelfths, pick }: Action, index: number): Step {
  // Entries a minute apart on 10 March; a backdated one takes effect at the end of its day.
  const now = new Date(Date.UTC(2026, 2, 10, 9, index)).toISOString();
  const onDay = day(`2026-03-${String(10 - back).padStart(2, "0")}`);
  const used = amount((twelfths * AMOUNT_PER_UNIT) / 12);
  const line = {
    supplyId: "paper",
    amount: used,
    recipeStepId: null,
    typedValue: String(twelfths),
    typedUnit: "twelfths",
  };
  return {
    db,
    told,
    by: { device: "test", now },
    index,
    onDay,
    at: back === 0 ? now : endOfDay(onDay, "Etc/UTC"),
    used,
    line,
    body: parcelBody(`p${index}`, {
      packedOn: onDay,
      lines: [line],
      cartons: [],
      countedSameDay: "after",
    }),
    picked: [...told.parcels.keys()][pick % Math.max(told.parcels.size, 1)],
    price: pick,
  };
}

describe("the ledger", () => {
  it("keeps on hand equal to the latest count and what took effect since, under any sequence of actions", async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(action, { minLength: 1, maxLength: 14 }), async (actions) => {
        const shop = await shopFixture();
        try {
          const told: Told = { parcels: new Map(), others: [], counts: [] };
          for (const [index, each] of actions.entries()) {
            await TAKE[each.kind](stepOf(shop.db, told, each, index));
          }
          const stock = (await stockOf(shop.db)).find((row) => row.supplyId === "paper");
          const entries = [...told.parcels.values(), ...told.others];
          expect(stock?.amount ?? 0).toBe(expectedOnHand(entries, told.counts));
          expect((await proveRollUps(shop.db)).differences).toEqual([]);
        } finally {
          await shop.close();
        }
      }),
      { numRuns: 60 },
    );
  });

  it("adds any sequence of halves, thirds and quarters over separate parcels exactly", async () => {
    const shop = await shopFixture();
    const parts = [2, 3, 4, 3, 3, 2, 4, 4, 4];
    for (const [index, part] of parts.entries()) {
      const line = {
        supplyId: "paper",
        amount: amount(AMOUNT_PER_UNIT / part),
        recipeStepId: null,
        typedValue: `1/${part}`,
        typedUnit: "sheet",
      };
      await recordParcel(shop.db, parcelBody(`p${index}`, { lines: [line], cartons: [] }), {
        device: "test",
        now: "2026-03-10T12:00:00.000Z",
      });
    }
    // Two halves, three thirds and four quarters are three sheets.
    expect((await stockOf(shop.db))[0]?.amount).toBe(-3 * AMOUNT_PER_UNIT);
    await shop.close();
  });

  it("neither loses nor doubles a parcel when eight clients record at once, each one twice", async () => {
    const shop = await shopFixture();
    const ids = Array.from({ length: 40 }, (_, index) => `p${index}`);
    const by = { device: "test", now: "2026-03-10T12:00:00.000Z" };
    const clients = Array.from({ length: 8 }, async (_, client) => {
      for (const id of ids.filter((_id, index) => index % 4 === client % 4))
        await recordParcel(shop.db, parcelBody(id), by);
    });
    await Promise.all(clients);
    expect(await shop.db.parcel.count()).toBe(40);
    expect((await stockOf(shop.db)).find((row) => row.supplyId === "paper")?.amount).toBe(
      -280 * AMOUNT_PER_UNIT,
    );
    expect((await proveRollUps(shop.db)).differences).toEqual([]);
    await shop.close();
  });
});
