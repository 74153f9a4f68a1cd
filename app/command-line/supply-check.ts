import { instantOfTime } from "#lib/units/instant";
import { databaseFile } from "#prisma/client";
import { runSupplyCheck } from "./supply-check/run-supply-check";

process.exitCode = await runSupplyCheck(process.argv.slice(2), {
  databaseFile: databaseFile(),
  now: instantOfTime(Date.now()),
  write: (text) => process.stdout.write(text),
  tell: (text) => process.stderr.write(text),
});
