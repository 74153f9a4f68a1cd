import { parseArgs } from "node:util";
import { hostOf } from "../server/host-of.mjs";
import { houseAddresses } from "../server/house/house-addresses.mjs";
import { nameSharedHosts } from "../server/house/shared-hosts.mjs";
import { command } from "./set-up/command.mjs";
import { databaseFile } from "./set-up/database-file.mjs";
import { migrate } from "./set-up/migrate.mjs";
import { nextBuild } from "./set-up/next-build.mjs";
import { root } from "./set-up/root.mjs";
import { runTypeScript } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";
import { sweepImports } from "./set-up/sweep-imports.mjs";
import { wantedPort } from "./set-up/wanted-port.mjs";

const USAGE = `npm start [-- --demo] [-- --share] [-- --port 3000]

  --demo      loads the demo shop into an empty database first
  --share     serves the home network too: to devices that were paired, and no others
  --port N    serves on this port (also: the variable PORT); else on 3000 or the next free one

WADDING_DATABASE names another database file than data/wadding.db.`;

const NO_HOUSE = `This machine has no address in a home network to share on: it is in none, or has one that the whole
internet can reach, where nothing must be shared unencrypted. Start without --share.`;

await command(async () => {
  const { values } = parseArgs({
    options: {
      demo: { type: "boolean" },
      share: { type: "boolean" },
      port: { type: "string" },
      help: { type: "boolean", short: "h" },
    },
  });
  if (values.help) {
    console.log(USAGE);
    return;
  }
  const wanted = wantedPort(values.port ?? process.env.PORT);
  const addresses = values.share ? houseAddresses() : [];
  if (values.share && addresses.length === 0) throw new Error(NO_HOUSE);
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
  const serving = await serve({ folder: root, ...wanted, shared: { addresses, database: file } });
  console.log(`wadding is at http://127.0.0.1:${serving.port} (database ${file}); stop it with Ctrl+C`);
  const hosts = addresses.map((address) => hostOf(address, serving.port));
  nameSharedHosts(hosts);
  if (hosts.length > 0) console.log(houseWords(hosts, serving.port));
  for (const signal of /** @type {const} */ (["SIGINT", "SIGTERM"])) {
    process.once(signal, async () => {
      await serving.close();
      process.exit(0);
    });
  }
});

/**
 * Where the devices of the house find the program, and how they are let in.
 *
 * @param {readonly string[]} hosts
 * @param {number} port
 */
function houseWords(hosts, port) {
  const places = hosts.map((host) => `http://${host}`).join(" or ");
  return `In the house it is at ${places}, for paired devices: pair one at http://127.0.0.1:${port}/setup/devices`;
}
