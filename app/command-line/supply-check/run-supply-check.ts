import type { WeeklyCheck } from "#lib/replenishment/weekly-check";
import type { Day } from "#lib/units/day";
import { type Instant, shopDay } from "#lib/units/instant";
import { closeDatabase, type Database, openDatabase } from "#prisma/client";
import { shopOf } from "#prisma/records/shop";
import { weeklyCheckOn } from "#prisma/records/weekly-checks";
import { checkArguments } from "./check-arguments";
import { plainCheckRows } from "./check-rows";
import { checkTable } from "./check-table";
import { withFilesLoaded } from "./with-files-loaded";

/** What the command reads and writes besides its arguments. */
export type CheckSurroundings = {
  /** Path of the shop's own database. */
  readonly databaseFile: string;
  readonly now: Instant;
  readonly write: (text: string) => void;
  /** Progress and problems, kept apart from the answer. */
  readonly tell: (text: string) => void;
};

const USAGE = `npm run supply-check -- [--today YYYY-MM-DD] [--json] [--import PARCELS.csv --shop SHOP.json]

Says what to order today, and by which day the rest.
  --today    check as of this day instead of today
  --json     an array of rows for other programs, numbers in use units
  --import   parcels to check instead of the shop's own database, with
  --shop     the shop that packed them; both stay as they are
`;

const WRONG_ARGUMENTS = 2;

type Outcome = { readonly kind: "checked"; readonly check: WeeklyCheck } | { readonly kind: "no-shop" };

/**
 * Runs the supply check.
 *
 * @param args - the arguments after the command's name
 * @param around - database, clock and where text goes
 * @returns the exit code: 0 done, 1 the files or the database cannot be checked, 2 wrong arguments
 * @example process.exitCode = await runSupplyCheck(process.argv.slice(2), around);
 */
export async function runSupplyCheck(args: readonly string[], around: CheckSurroundings): Promise<number> {
  const wanted = checkArguments(args);
  if (wanted.kind === "wrong") {
    around.tell(`${wanted.message}\n\n${USAGE}`);
    return WRONG_ARGUMENTS;
  }
  if (wanted.kind === "help") {
    around.write(USAGE);
    return 0;
  }
  const check = (db: Database) => checked(db, wanted.today, around.now);
  const outcome =
    wanted.files === null
      ? await withDatabase(around.databaseFile, check)
      : await withFilesLoaded(wanted.files, around, check);
  if (outcome.kind === "files-refused") return 1;
  if (outcome.kind === "no-shop") {
    around.tell("There is no shop yet: open the program and set it up, or load the demo shop.\n");
    return 1;
  }
  const { rows } = outcome.check;
  around.write(
    wanted.json ? `${JSON.stringify(plainCheckRows(rows), null, 2)}\n` : checkTable(outcome.check),
  );
  return 0;
}

async function withDatabase<T>(file: string, work: (db: Database) => Promise<T>): Promise<T> {
  const db = await openDatabase(file);
  try {
    return await work(db);
  } finally {
    await closeDatabase(db);
  }
}

async function checked(db: Database, today: Day | null, now: Instant): Promise<Outcome> {
  const shop = await shopOf(db);
  if (shop === null) return { kind: "no-shop" };
  const check = await weeklyCheckOn(db, today ?? shopDay(now, shop.timeZone));
  return check === null ? { kind: "no-shop" } : { kind: "checked", check };
}
