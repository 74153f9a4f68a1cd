import { command } from "./set-up/command.mjs";
import { databaseFile } from "./set-up/database-file.mjs";
import { migrate } from "./set-up/migrate.mjs";
import { runTypeScript } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";

await command(async () => {
  process.env.WADDING_DATABASE = databaseFile();
  const args = process.argv.slice(2);
  await setUp();
  // A check of files leaves the shop's own database alone.
  if (!args.some((argument) => argument.startsWith("--import"))) await migrate(databaseFile());
  await runTypeScript("app/command-line/supply-check.ts", args);
});
