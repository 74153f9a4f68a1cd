import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { costedPlan } from "#lib/purchasing/plan/costed-plan";
import type { PlanQuestion } from "#lib/purchasing/plan/plan-question";
import { purchasePlan } from "#lib/purchasing/plan/purchase-plan";
import { orderPacks } from "#lib/replenishment/order-quantity/order-packs";
import { packPriceSteps } from "#lib/replenishment/order-quantity/pack-price-steps";
import { addDays, day } from "#lib/units/day";
import { instant } from "#lib/units/instant";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { loadDemoShop } from "#prisma/demo/load-demo-shop";
import { migrateDatabase } from "#prisma/migrate";
import { endSolver, solveInWorker } from "../../../solver/solve-in-worker";
import { type Measurement, measurement } from "../../measurement";
import { withFilesLoaded } from "../../supply-check/with-files-loaded";
import { DATA } from "../forecast/giftware-ledger";
import {
  DAYS_A_WEEK,
  type PlayedWeek,
  type PlayedYear,
  playedYear,
  type WeekOrders,
  type YearToPlay,
  yearToPlay,
} from "./played-year";

const SECONDS_A_WEEK = 3;
const SECONDS_CLAIRVOYANT = 90;
const GAP = 0.002;
const PER_CENT = 100;
const DEMO_DAY = day("2026-11-25");
const DEMO_WEEKS = 52;
const GIFTWARE_FIRST = day("2010-12-13");
const GIFTWARE_WEEKS = 51;

/**
 * A year, week by week, with what was known then: the joint plan against a plan that knows the future and keeps the same
 * reorder points, and against ordering each supply by its own economic quantity.
 */
export async function rollingYear(): Promise<Measurement[]> {
  const demo = await withDemo(async (db) =>
    told("demo shop", await yearToPlay(db, addDays(DEMO_DAY, -DEMO_WEEKS * DAYS_A_WEEK), DEMO_WEEKS)),
  );
  const files = { parcels: `${DATA}giftware-parcels.csv`, shop: `${DATA}giftware-shop.json` };
  const telling = { now: instant("2012-01-02T12:00:00.000Z"), tell: () => undefined };
  const giftware = await withFilesLoaded(files, telling, async (db) =>
    told("giftware parcels", await yearToPlay(db, GIFTWARE_FIRST, GIFTWARE_WEEKS)),
  );
  await endSolver();
  if (!Array.isArray(giftware)) throw new Error("The giftware files could not be loaded");
  return [...demo, ...giftware];
}

async function withDemo<T>(work: (db: Database) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), "wadding-bench-"));
  try {
    const file = join(folder, "demo.db");
    migrateDatabase(file);
    const db = await openDatabase(file);
    try {
      await loadDemoShop(db, { today: DEMO_DAY });
      return await work(db);
    } finally {
      await closeDatabase(db);
    }
  } finally {
    await rm(folder, { recursive: true });
  }
}

async function told(name: string, year: YearToPlay): Promise<Measurement[]> {
  const joint = await playedYear(year, byPlan);
  const alone = await playedYear(year, byOwnQuantity);
  const known = await clairvoyant(year, joint);
  const of = (what: string, value: number, unit: string, target: number | null) =>
    measurement({ area: "purchasing", name: `${name}, ${year.weeks} weeks: ${what}`, value, unit, target });
  const ordering = (played: PlayedYear) => played.deliveryMinor + played.holdingMinor;
  const points = PER_CENT * Math.abs(joint.filled - alone.filled);
  return [
    of(
      "purchase, delivery and holding above a plan that knows the future",
      PER_CENT * (total(joint) / known - 1),
      "%",
      3,
    ),
    of(
      "delivery and holding, as a share of that of each supply's own quantity",
      PER_CENT * (ordering(joint) / ordering(alone)),
      "%",
      85,
    ),
    of("share of the need filled differs by", points, "points", 0.5),
    of("share of the need filled", PER_CENT * joint.filled, "%", null),
    of("orders", joint.orders, "orders", null),
    of("orders with each supply's own quantity", alone.orders, "orders", null),
  ];
}

function total({ goodsMinor, deliveryMinor, holdingMinor, leftMinor }: PlayedYear): number {
  return goodsMinor + deliveryMinor + holdingMinor - leftMinor;
}

async function byPlan({ question }: PlayedWeek): Promise<WeekOrders> {
  const now = () => performance.now() / 1_000;
  const answer = await purchasePlan(question, {
    solve: solveInWorker,
    seconds: SECONDS_A_WEEK,
    gap: GAP,
    now,
  });
  const plan = answer.kind === "plan" ? answer.plan : answer.nearest;
  return (plan?.orders ?? []).filter(({ week }) => week === 0).flatMap(({ lines }) => lines);
}

/** Each supply by itself: at or under its reorder point an order by its economic quantity, with the whole delivery. */
async function byOwnQuantity({ input, question }: PlayedWeek): Promise<WeekOrders> {
  return input.supplies.flatMap(({ row, input: { offers } }): WeekOrders => {
    const isDue = row.action === "order-today" || row.action === "order-this-week";
    const offer = offers.find(({ offerId }) => offerId === row.offerId);
    const supply = question.supplies.find(({ id }) => id === row.supplyId);
    const supplier = question.suppliers.find(({ id }) => id === offer?.supplierId);
    const prices = question.offers.find(({ id }) => id === offer?.offerId);
    if (!isDue || offer === undefined || supply === undefined || supplier === undefined || !prices?.steps)
      return [];
    const sized = orderPacks({
      packAmount: prices.unitsPerPack,
      prices: packPriceSteps({ ...offer, priceMinor: prices.steps[0]?.priceMinor ?? 0 }),
      leastPacks: null,
      leastValue: supplier.leastOrderMinor,
      mostPacks: null,
      delivery: { charge: supplier.deliveryMinor, freeFrom: supplier.freeFromMinor },
      orderCost: supplier.handlingMinor,
      holdingShare: input.limits.holdingPerMille / 1_000,
      usePerWeek: supply.use[0] ?? 0,
      stockOnArrival: 0,
      cash: null,
      room: null,
      shelfLifeDays: null,
      longestCoverWeeks: null,
      daysUntilEnd: null,
    });
    // At least what lifts the position above the point.
    const least = Math.max(
      1,
      Math.ceil(((supply.wanted[0] ?? 0) + (supply.use[0] ?? 0) - supply.stock) / prices.unitsPerPack),
    );
    return [{ offerId: offer.offerId, packs: Math.max(least, sized.packs) }];
  });
}

/**
 * Least cost of the year for who knows every use and keeps the position above the same reorder points: one question
 * over all weeks. What the solver proves or finds, the lower.
 */
async function clairvoyant(year: YearToPlay, joint: PlayedYear): Promise<number> {
  const [first] = joint.questions;
  const last = joint.questions.at(-1);
  if (first === undefined || last === undefined)
    throw new RangeError("clairvoyant requires a week, got none");
  const usedIn = (id: string, week: number) =>
    (year.used.get(id) ?? [])
      .slice(week * DAYS_A_WEEK, (week + 1) * DAYS_A_WEEK)
      .reduce((sum, each) => sum + each, 0);
  const question: PlanQuestion = {
    ...last,
    weeks: year.weeks,
    suppliers: last.suppliers.map((supplier) => ({
      ...supplier,
      orderWeeks: new Array<boolean>(year.weeks).fill(true),
    })),
    offers: last.offers.map((offer) => ({ ...offer, leadWeeks: 0 })),
    supplies: last.supplies.map((supply) => {
      const use = Array.from({ length: year.weeks }, (_, week) => Math.max(0, usedIn(supply.id, week)));
      return {
        ...supply,
        stock: joint.start.get(supply.id) ?? 0,
        arrivals: new Array<number>(year.weeks).fill(0),
        use,
        wanted: joint.questions.map((asked, week) => {
          const then = asked.supplies.find(({ id }) => id === supply.id);
          const point = then === undefined ? 0 : (then.wanted[0] ?? 0) + (then.use[0] ?? 0);
          return Math.max(0, point - (use[week] ?? 0));
        }),
        most: new Array<number>(year.weeks).fill(Infinity),
      };
    }),
    limits: { cash: [], litres: null },
  };
  const now = () => performance.now() / 1_000;
  const answer = await purchasePlan(question, {
    solve: solveInWorker,
    seconds: SECONDS_CLAIRVOYANT,
    gap: GAP,
    now,
  });
  const plan = answer.kind === "plan" ? answer.plan : answer.nearest;
  if (plan === null) throw new RangeError("clairvoyant requires a plan, got none");
  const { costs } = costedPlan(question, {
    lines: plan.orders.flatMap(({ week, lines }) =>
      lines.map(({ offerId, packs }) => ({ offerId, week, packs })),
    ),
    standIns: [],
  });
  // The joint year keeps what is on hand, this plan reckons with positions: what is on its way costs no keeping.
  const onItsWay = last.supplies.reduce((sum, supply) => {
    const days = leadDays(supply.id, year);
    const weekly = Array.from({ length: year.weeks }, (_, week) => usedIn(supply.id, week));
    return sum + weekly.reduce((all, use) => all + (use * days * supply.holdingMinor) / DAYS_A_WEEK, 0);
  }, 0);
  return costs.goodsMinor + costs.deliveryMinor + costs.holdingMinor - onItsWay - costs.endValueMinor;
}

function leadDays(supplyId: string, year: YearToPlay): number {
  const input = year.known.at(-1)?.inputs.find((each) => each.supplyId === supplyId);
  return Math.min(...(input?.offers ?? []).map(({ delivery }) => delivery.terms.promisedDays));
}
