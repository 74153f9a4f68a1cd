import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { sweepImports } from "#app/command-line/set-up/sweep-imports.mjs";
import { type ImportConnection, openImportConnection } from "#prisma/records/import/import-connection";
import { importRunOf, waitingImports } from "#prisma/records/import/import-runs";
import type { ShopFixture } from "../../prisma/records/shop-fixture";
import { countedShop } from "./counted-shop";
import { sendFile, sendForm, waitForState } from "./import-screen";
import {
  expectWholeBooks,
  killServer,
  moments,
  recordUntilGone,
  type ServerProcess,
  sharedKills,
  startServer,
} from "./killed-server";

// 8 of 50 kills: four while a file is staged, three while it is booked, one while it is sent. The other 42 fall
// while parcels alone are recorded (kill.test.ts).
const KILLS = sharedKills(0.16, 5);
const SECONDS_A_KILL = 120;
const SEED = 26_112_025;
const CLIENTS = 2;
/** Booked in three parts. */
const PARCELS = 2400;
/** Rows or parcels between two moments at which a step's progress can be seen, and most that is waited past one. */
const STRIDE = { stage: 600, commit: 1000 } as const;
const PAST_MS = 60;
/** Paper, bubble and the carton of each parcel. */
const LINES = 3;
const UPLOAD_MS = 40;
const LONG_MS = 180_000;
const PHASES = ["staging", "commit", "staging", "commit", "upload"] as const;
const VICTIMS = ["server and import", "import", "server"] as const;
const FORMS = { stage: "Columns", commit: "Book the parcels" } as const;
const FILE = `packed on,order,item type,pieces,zone,carton\n${Array.from(
  { length: PARCELS },
  (_, at) => `2026-02-${String((at % 28) + 1).padStart(2, "0")},R${at},mug,1,near,carton-8`,
).join("\n")}\n`;

type Step = keyof typeof FORMS;
type Kill = { readonly source: string; readonly phase: (typeof PHASES)[number]; readonly victim: string };

let shop: ShopFixture;
let db: ImportConnection;
let notes: string;
let server: ServerProcess;
beforeAll(async () => {
  shop = await countedShop();
  db = openImportConnection(shop.file);
  notes = join(dirname(shop.file), "imports-noted");
  await start();
});
afterAll(async () => {
  await killServer(server);
  db.close();
  await shop.close();
});

/** Starts as the program does: what stopped half way is cleared first. */
async function start(): Promise<void> {
  await sweepImports(shop.file);
  const noting = pathToFileURL(join(import.meta.dirname, "note-import.mjs")).href;
  server = await startServer(shop.file, { NODE_OPTIONS: `--import=${noting}`, WADDING_TEST_IMPORTS: notes });
}

/** What an import's own process noted of itself, once it did. */
async function noted(runId: string, step: string): Promise<string> {
  for (const until = Date.now() + LONG_MS; Date.now() < until; await pause(3)) {
    const lines = existsSync(notes) ? readFileSync(notes, "utf8").split("\n") : [];
    const line = lines.find((each) => each.startsWith(`${runId} ${step} `));
    if (line !== undefined) return line.slice(runId.length + step.length + 2);
  }
  throw new Error(`No process noted ${step} of run ${runId}`);
}

function number(sql: string, ...values: string[]): number {
  return (
    db
      .prepare<string[], number>(sql)
      .pluck()
      .get(...values) ?? Number.NaN
  );
}

const parcelsFrom = (source: string) => number(`SELECT COUNT(*) FROM "Parcel" WHERE "source" = ?`, source);

/** Sends a step's form and gives the number of the process that it started. */
async function begin(runId: string, step: Step): Promise<number> {
  await sendForm(server.port, runId, FORMS[step]);
  return Number(await noted(runId, step));
}

/** Takes a step to its end. */
async function finish(runId: string, step: Step): Promise<void> {
  await begin(runId, step);
  await waitForState(server.port, runId, [step === "stage" ? "ready" : "committed"]);
}

/** Waits until a step came as far as a share of the file: by what it did, however quick the machine is. */
async function reach(runId: string, step: Step, source: string, share: number): Promise<void> {
  const least = Math.floor((share * PARCELS) / STRIDE[step]) * STRIDE[step];
  for (const until = Date.now() + LONG_MS; Date.now() < until; await pause(1)) {
    const { state, rowsRead } = importRunOf(db, runId) ?? { state: "none", rowsRead: 0 };
    if (state !== "reading" && state !== "committing") return;
    if ((step === "stage" ? rowsRead : parcelsFrom(source)) >= least) return;
  }
  throw new Error(`Run ${runId} did not come to ${least} of ${PARCELS} in its ${step}`);
}

/** Imports the file once more: what is booked already stays, all else is added. */
async function importAgain(source: string): Promise<void> {
  const before = parcelsFrom(source);
  const runId = await sendFile(server.port, FILE, source);
  await finish(runId, "stage");
  expect(importRunOf(db, runId)).toMatchObject({
    newParcels: PARCELS - before,
    sameParcels: before,
    changedParcels: 0,
  });
  if (before === 0) await finish(runId, "commit");
  else await sendForm(server.port, runId, "Cancel the import");
  expect(parcelsFrom(source)).toBe(PARCELS);
  const lines = `SELECT COUNT(*) FROM "Movement" m JOIN "Parcel" p ON p."id" = m."parcelId" WHERE p."source" = ?`;
  expect(number(lines, source)).toBe(PARCELS * LINES);
}

/** Kills at a random moment of a phase; gives where the run stood at that moment, and its id where it had one. */
async function strike(kill: Kill, chance: () => number) {
  if (kill.phase === "upload") {
    const sent = sendFile(server.port, FILE, kill.source, UPLOAD_MS / 10).then(
      () => "uploaded",
      (error: unknown) => {
        // The connection broke under the upload.
        if (error instanceof TypeError) return "uploading";
        throw error;
      },
    );
    await pause((chance() * UPLOAD_MS) / 2);
    await killServer(server);
    return { runId: null, step: null, state: await sent };
  }
  const runId = await sendFile(server.port, FILE, kill.source);
  const step = kill.phase === "staging" ? "stage" : "commit";
  if (step === "commit") await finish(runId, "stage");
  const process = await begin(runId, step);
  await reach(runId, step, kill.source, chance());
  await pause(chance() * PAST_MS);
  const { state } = importRunOf(db, runId) ?? { state: "none" };
  if (kill.victim !== "server") killProcess(process);
  if (kill.victim !== "import") await killServer(server);
  return { runId, step, state };
}

function killProcess(id: number): void {
  try {
    process.kill(id, "SIGKILL");
  } catch (error) {
    // It was done before it could be killed.
    if (!(error instanceof Error && "code" in error && error.code === "ESRCH")) throw error;
  }
}

/** A start leaves nothing of runs that ended: no state between, no staged row, no file. */
function expectCleared(): void {
  expect(number(`SELECT COUNT(*) FROM "ImportRun" WHERE "state" IN ('reading', 'committing')`)).toBe(0);
  for (const table of ["StagedRow", "StagedParcel", "StagedUse"])
    expect(
      number(
        `SELECT COUNT(*) FROM "${table}" s JOIN "ImportRun" r ON r."id" = s."runId" WHERE r."state" <> 'ready'`,
      ),
    ).toBe(0);
  const files = readdirSync(join(dirname(shop.file), "imports")).sort();
  expect(files).toEqual(
    waitingImports(db)
      .map((id) => `${id}.csv`)
      .sort(),
  );
}

/** The import's process alone was killed: the server goes on and says so. */
async function expectServerGoesOn(runId: string | null, acknowledged: readonly string[]): Promise<void> {
  const before = acknowledged.length;
  if (runId !== null) await waitForState(server.port, runId, ["refused", "committed", "ready"]);
  for (const until = Date.now() + LONG_MS; acknowledged.length === before; await pause(3))
    if (Date.now() > until) throw new Error("The server took no parcel after its import was killed");
}

type Told = { readonly acknowledged: string[]; readonly struck: string[] };

/** One kill and what must hold after it; whatever it broke off is then imported anew. */
async function round(
  kill: Kill & { readonly at: number },
  chance: () => number,
  { acknowledged, struck }: Told,
): Promise<void> {
  let isWanted = true;
  const recording = Promise.all(
    Array.from({ length: CLIENTS }, (_, client) =>
      recordUntilGone(server.port, `kill-${kill.at}-${client}`, acknowledged, () => isWanted),
    ),
  );
  const { runId, step, state } = await strike(kill, chance);
  struck.push(`${kill.phase}, ${kill.victim}: ${state}`);
  if (kill.victim === "import") {
    await expectServerGoesOn(runId, acknowledged);
    isWanted = false;
    await recording;
  } else {
    await recording;
    // An import that lost its server stops by itself.
    if (kill.victim === "server" && runId !== null) await noted(runId, `${step} ended`);
    // A commit may stand between two parts now: each is whole, and the start books the rest.
    await expectWholeBooks(shop.db, acknowledged);
    await start();
    expectCleared();
  }
  expect([0, PARCELS]).toContain(parcelsFrom(kill.source));
  await expectWholeBooks(shop.db, acknowledged);
  await importAgain(kill.source);
}

describe("an import killed while parcels are recorded", () => {
  it(
    `is booked whole or not at all, and can be repeated (${KILLS} kills, seed ${SEED})`,
    async () => {
      const chance = moments(SEED);
      const told: Told = { acknowledged: [], struck: [] };
      await importAgain("never killed");
      for (let at = 0; at < KILLS; at += 1) {
        const phase = PHASES[at % PHASES.length] ?? "staging";
        // Every phase meets every victim in turn; an upload has no process but the server.
        const victim =
          phase === "upload" ? "server" : (VICTIMS[Math.floor(at / 2) % VICTIMS.length] ?? "server");
        await round({ at, source: `kill ${at}`, phase, victim }, chance, told);
      }
      await killServer(server);
      await start();
      expectCleared();
      await expectWholeBooks(shop.db, told.acknowledged);
      const moment = (each: string) => told.struck.some((line) => line.endsWith(`: ${each}`));
      expect(
        ["uploading", "reading", "committing"].filter((each) => !moment(each)),
        told.struck.join("\n"),
      ).toEqual([]);
      expect(told.acknowledged.length).toBeGreaterThan(KILLS);
    },
    (KILLS + 1) * SECONDS_A_KILL * 1000,
  );
});
