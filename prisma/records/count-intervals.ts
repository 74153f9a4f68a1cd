import type { CountMethod } from "#lib/packing/learning/count-deviation";
import type { CountInterval, StepUse } from "#lib/packing/learning/count-interval";
import { type Amount, amount } from "#lib/units/amount";
import { addDays, type Day, day } from "#lib/units/day";
import type { Database } from "../client";
import { Prisma } from "../generated/client";

/** A supply's counts, and what happened from each to the next. */
export type CountedSupply = {
  readonly supplyId: string;
  /** oldest first */
  readonly intervals: readonly CountInterval[];
  /** days of all counts, with the first; oldest first */
  readonly countDays: readonly Day[];
};

/** After four half-lives a count weighs a sixteenth: older ones are not read. */
const DAYS_BACK = 720;
const METHODS: readonly CountMethod[] = ["number", "roll", "height", "weight", "looks-right"];
const NOTHING: Moved = { received: amount(0), spoilt: amount(0), usedByBook: amount(0) };

/**
 * What happened to each supply from count to count. A step's uses are the lines that took what the card says; a line that
 * was changed by hand, of another supply, without a step, a carton or a line of an unusual parcel says nothing about a card:
 * it is use by the book as it stands. "Looks right" is a count with the error of a glance: whoever says so had the pile
 * before the eyes.
 *
 * @param db the database
 * @param today last day whose counts are read
 * @returns supplies with at least one count, by id
 */
export async function countIntervals(db: Database, today: Day): Promise<CountedSupply[]> {
  const since = addDays(today, -DAYS_BACK);
  const counts = await db.count.findMany({
    where: { countedDay: { gte: since, lte: today } },
    orderBy: [{ supplyId: "asc" }, { countedAt: "asc" }, { id: "asc" }],
    select: { id: true, supplyId: true, countedDay: true, amount: true, method: true },
  });
  const spans = Prisma.sql`
    SELECT "id", "supplyId", "countedAt" AS "closedAt",
      LAG("countedAt") OVER (PARTITION BY "supplyId" ORDER BY "countedAt", "id") AS "openedAt"
    FROM "Count" WHERE "countedDay" BETWEEN ${since} AND ${today}`;
  const [moved, uses] = await Promise.all([movedInSpans(db, spans), usesInSpans(db, spans)]);
  const bySupply = new Map<string, typeof counts>();
  for (const count of counts) bySupply.set(count.supplyId, [...(bySupply.get(count.supplyId) ?? []), count]);
  return [...bySupply].map(([supplyId, own]) => ({
    supplyId,
    countDays: own.map(({ countedDay }) => day(countedDay)),
    intervals: own.slice(1).map((closing, at) => {
      const opening = own[at] ?? closing;
      return {
        from: day(opening.countedDay),
        to: day(closing.countedDay),
        opening: statement(opening),
        closing: statement(closing),
        ...(moved.get(closing.id) ?? NOTHING),
        uses: uses.get(closing.id) ?? [],
      };
    }),
  }));
}

function statement(count: { readonly amount: bigint; readonly method: string }): CountInterval["opening"] {
  const method = METHODS.find((each) => each === count.method);
  if (method === undefined) throw new Error(`The database holds “${count.method}” as a way of counting`);
  return { counted: amount(Number(count.amount)), method };
}

type Moved = { readonly received: Amount; readonly spoilt: Amount; readonly usedByBook: Amount };
type MovedRow = { readonly countId: string } & Readonly<Record<keyof Moved, bigint | number>>;

/** What moved, by closing count. What took effect at the instant of a count is before it, as the book has it. */
async function movedInSpans(db: Database, spans: Prisma.Sql): Promise<Map<string, Moved>> {
  const rows = await db.$queryRaw<MovedRow[]>`
    WITH "span" AS (${spans})
    SELECT s."id" AS "countId",
      COALESCE(SUM(m."amount") FILTER (WHERE m."cause" IN ('received', 'saved', 'returned')), 0) AS "received",
      COALESCE(-SUM(m."amount") FILTER (WHERE m."cause" = 'spoilt'), 0) AS "spoilt",
      COALESCE(-SUM(m."amount") FILTER (WHERE m."cause" = 'packed'), 0) AS "usedByBook"
    FROM "span" s JOIN "Movement" m ON m."supplyId" = s."supplyId"
      AND m."effectiveAt" > s."openedAt" AND m."effectiveAt" <= s."closedAt"
    GROUP BY s."id"`;
  return new Map(
    rows.map(({ countId, received, spoilt, usedByBook }) => [
      countId,
      {
        received: amount(Number(received)),
        spoilt: amount(Number(spoilt)),
        usedByBook: amount(Number(usedByBook)),
      },
    ]),
  );
}

/**
 * How often each step was taken as its card says, by closing count; one text for a count, as a row for each step takes many
 * times as long. The plus sign keeps SQLite from walking all lines that reverse nothing instead of those between two counts.
 */
async function usesInSpans(db: Database, spans: Prisma.Sql): Promise<Map<string, StepUse[]>> {
  const rows = await db.$queryRaw<{ readonly countId: string; readonly uses: string }[]>`
    WITH "span" AS (${spans}), "taken" AS (
      SELECT s."id" AS "countId", t."id" AS "stepKey", t."recipeId" AS "recipeKey", t."amount", t."position",
        -m."amount" AS "took", CASE t."per" WHEN 'piece' THEN p."pieces" ELSE 1 END AS "times"
      FROM "span" s JOIN "Movement" m ON m."supplyId" = s."supplyId"
        AND m."effectiveAt" > s."openedAt" AND m."effectiveAt" <= s."closedAt"
      JOIN "RecipeStep" t ON t."id" = m."recipeStepId" AND t."supplyId" = m."supplyId"
      LEFT JOIN "ParcelPiece" p ON p."parcelId" = m."parcelId" AND p."recipeId" = t."recipeId"
      WHERE m."cause" = 'packed' AND +m."reversesId" IS NULL AND NOT m."unusual"
        AND NOT EXISTS (SELECT 1 FROM "Movement" r WHERE r."reversesId" = m."id")),
    "summed" AS (
      SELECT "countId", "stepKey", "recipeKey", "position", "amount", SUM("times") AS "times"
      FROM "taken" WHERE "took" = "amount" * "times" GROUP BY "countId", "stepKey")
    SELECT "countId", GROUP_CONCAT("stepKey" || char(9) || "recipeKey" || char(9) || "amount" || char(9) || "times",
      char(10) ORDER BY "recipeKey", "position") AS "uses"
    FROM "summed" GROUP BY "countId"`;
  return new Map(rows.map(({ countId, uses }) => [countId, uses.split("\n").map(stepUse)]));
}

function stepUse(line: string): StepUse {
  const [stepKey = "", recipeKey = "", says, times] = line.split("\t");
  return { stepKey, recipeKey, times: Number(times), amount: amount(Number(says)) };
}
