import { existsSync } from "node:fs";
import { join } from "node:path";
import { progress } from "./progress.mjs";
import { root } from "./root.mjs";
import { runPackage } from "./run.mjs";
import { fingerprint, isStale, rememberFresh } from "./stale.mjs";

const INPUTS = ["prisma/schema.prisma", "prisma.config.ts", "node_modules/prisma/package.json"];
const NAME = "generated-client";

/**
 * Writes the database client from the schema where the schema changed.
 * The generator looks for a native engine that it never runs: any program that exists will do.
 */
export async function generate() {
  const print = fingerprint(INPUTS);
  if (existsSync(join(root, "prisma/generated/client.ts")) && !isStale(NAME, print)) return;
  await progress("Generating the database client", () =>
    runPackage("prisma/build/index.js", ["generate"], {
      env: {
        PRISMA_SCHEMA_ENGINE_BINARY: process.execPath,
        CHECKPOINT_DISABLE: "1",
        PRISMA_HIDE_UPDATE_MESSAGE: "1",
      },
      output: "stderr",
    }),
  );
  rememberFresh(NAME, print);
}
