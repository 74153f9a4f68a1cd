import { command } from "./set-up/command.mjs";
import { databaseFile } from "./set-up/database-file.mjs";
import { runTypeScript } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";

await command(async () => {
  process.env.WADDING_DATABASE = databaseFile();
  await setUp();
  await runTypeScript("app/command-line/backup.ts", process.argv.slice(2));
});
