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
  const wanted = positionals.length > 0 ? positionals : areas;
  const unknown = wanted.find((area) => !areas.includes(area));
  if (unknown !== undefined) {
    throw new Error(
      `There is no area “${unknown}”: npm run bench -- AREA [--json] measures ${areas.join(", ")}`,
    );
  }
  await setUp();
  await nextBuild();
  await runTypeScript("app/command-line/bench.ts", values.json ? ["--json", ...wanted] : wanted);
});

function measuredAreas() {
  return readdirSync(join(root, "app/command-line/bench"))
    .filter((name) => name.endsWith(".ts"))
    .map((name) => name.replace(/\.ts$/, ""));
}
