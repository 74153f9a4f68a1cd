import { parseArgs } from "node:util";
import { command } from "./set-up/command.mjs";
import { databaseFile } from "./set-up/database-file.mjs";
import { migrate } from "./set-up/migrate.mjs";
import { nextBuild } from "./set-up/next-build.mjs";
import { root } from "./set-up/root.mjs";
import { runTypeScript } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";
import { sweepImports } from "./set-up/sweep-imports.mjs";
import { wantedPort } from "./set-up/wanted-port.mjs";

const USAGE = `npm start [-- --demo] [-- --port 3000]

  --demo      loads the demo shop into an empty database first
  --port N    serves on this port (also: the variable PORT); else on 3000 or the next free one

WADDING_DATABASE names another database file than data/wadding.db.`;

await command(async () => {
  const { values } = parseArgs({
    options: { demo: { type: "boolean" }, port: { type: "string" }, help: { type: "boolean", short: "h" } },
  });
  if (values.help) {
    console.log(USAGE);
    return;
  }
  const wanted = wantedPort(values.port ?? process.env.PORT);
  const file = databaseFile();
  process.env.WADDING_DATABASE = file;
  await setUp();
  await migrate(file);
  await sweepImports(file);
  if (values.demo) await runTypeScript("app/command-line/load-demo.ts", [file], { output: "stderr" });
  await nextBuild();
  // The framework looks at this when it is loaded.
  Object.assign(process.env, { NODE_ENV: "production" });
  const { serve } = await import("../server/serve.mjs");
  const serving = await serve({ folder: root, ...wanted });
  console.log(`wadding is at http://127.0.0.1:${serving.port} (database ${file}); stop it with Ctrl+C`);
  for (const signal of /** @type {const} */ (["SIGINT", "SIGTERM"])) {
    process.once(signal, async () => {
      await serving.close();
      process.exit(0);
    });
  }
});
