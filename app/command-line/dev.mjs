import { command } from "./set-up/command.mjs";
import { databaseFile } from "./set-up/database-file.mjs";
import { migrate } from "./set-up/migrate.mjs";
import { runPackage } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";
import { wantedPort } from "./set-up/wanted-port.mjs";

await command(async () => {
  const { port } = wantedPort(process.env.PORT);
  process.env.WADDING_DATABASE = databaseFile();
  await setUp();
  await migrate(databaseFile());
  await runPackage("next/dist/bin/next", ["dev", "--hostname", "127.0.0.1", "--port", String(port)], {
    env: { NEXT_TELEMETRY_DISABLED: "1" },
  });
});
