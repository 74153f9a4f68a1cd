import { closeDatabase, openDatabase } from "#prisma/client";
import { sweepUnfinishedImports } from "#prisma/records/import/sweep-unfinished-imports";
import { finishCommits } from "../import/finish-commits";
import { sweepUploads } from "../import/sweep-uploads";

const file = process.argv[2];
if (file === undefined) throw new RangeError("sweep-imports requires the path of a database, got none");

const finished = await finishCommits(file, new Date().toISOString());
if (finished > 0) console.log(`Finished ${finished} import(s) whose booking had stopped half-way`);
const db = await openDatabase(file);
const cancelled = await sweepUnfinishedImports(db);
await closeDatabase(db);
await sweepUploads(file);
if (cancelled > 0)
  console.log(`Cleared ${cancelled} import(s) that had stopped half-way; nothing of them was booked`);
