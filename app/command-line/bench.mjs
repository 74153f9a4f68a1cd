import { readdirSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { command } from "./set-up/command.mjs";
import { nextBuild } from "./set-up/next-build.mjs";
import { root } from "./set-up/root.mjs";
import { runTypeScript } from "./set-up/run.mjs";
import { setUp } from "./set-up/set-up.mjs";

await command(async () => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { json: { type: "boolean" } },
  });
  const areas = measuredAreas();
  const [area = ""] = positionals;
  if (!areas.includes(area)) {
    throw new Error(`npm run bench -- AREA [--json] measures one of: ${areas.join(", ")}`);
  }
  await setUp();
  await nextBuild();
  await runTypeScript("app/command-line/bench.ts", values.json ? [area, "--json"] : [area]);
});

function measuredAreas() {
  return readdirSync(join(root, "app/command-line/bench"))
    .filter((name) => name.endsWith(".ts"))
    .map((name) => name.replace(/\.ts$/, ""));
}
