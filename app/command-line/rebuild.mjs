import { command } from "./set-up/command.mjs";
import { databaseFile } from "./set-up/database-file.mjs";
import { migrate } from "./set-up/migrate.mjs";
import { runTypeScript } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";

await command(async () => {
  process.env.WADDING_DATABASE = databaseFile();
  await setUp();
  await migrate(databaseFile());
  await runTypeScript("app/command-line/rebuild.ts", process.argv.slice(2));
});
