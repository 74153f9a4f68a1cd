import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { progress } from "./progress.mjs";
import { root } from "./root.mjs";
import { runPackage } from "./run.mjs";
import { fingerprint, isStale, rememberFresh } from "./stale.mjs";

const INPUTS = [
  "app",
  "lib",
  "prisma",
  "public",
  "next.config.mjs",
  "tsconfig.json",
  "package.json",
  "package-lock.json",
];
const NAME = "build";

/** Builds the screens for production where a source changed since the last build. */
export async function nextBuild() {
  const print = fingerprint(INPUTS, notBuilt);
  if (!isStale(NAME, `${print} ${buildId()}`)) return;
  await progress("Building the screens", () =>
    runPackage("next/dist/bin/next", ["build"], {
      env: { NEXT_TELEMETRY_DISABLED: "1", NODE_ENV: "production" },
      output: "stderr",
    }),
  );
  rememberFresh(NAME, `${print} ${buildId()}`);
}

/** @param {string} path */
function notBuilt(path) {
  return path === "app/command-line" || path === "app/server" || path === "prisma/generated";
}

function buildId() {
  const file = join(root, ".next/BUILD_ID");
  return existsSync(file) ? readFileSync(file, "utf8") : "none";
}
