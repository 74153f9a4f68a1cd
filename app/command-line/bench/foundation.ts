import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Measurement } from "../measurement";
import { startServer } from "../set-up/start-server.mjs";
import { generatedShop } from "./foundation/generated-shop";
import { importSpeed } from "./foundation/import-speed";
import { pageWeights } from "./foundation/page-weights";
import { recordSpeed } from "./foundation/record-speed";
import { weeklyCheckSpeed } from "./foundation/weekly-check-speed";

const FEW = 10_000;
const MANY = 100_000;

/** What the rest stands on: the weekly check, recording a parcel, the import, and what a screen weighs. */
export async function measure(): Promise<Measurement[]> {
  const folder = mkdtempSync(join(tmpdir(), "wadding-bench-"));
  try {
    const small = join(folder, "small.db");
    const large = join(folder, "large.db");
    await generatedShop(small, FEW);
    await generatedShop(large, MANY);
    const checks = await weeklyCheckSpeed(small, large);
    return [...checks, ...(await servedSpeed(folder, large))];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function servedSpeed(folder: string, file: string): Promise<Measurement[]> {
  const server = await startServer(file);
  try {
    const { url } = server;
    return [
      ...(await recordSpeed(url)),
      ...(await pageWeights(url)),
      ...(await importSpeed(folder, { url, file }, MANY)),
    ];
  } finally {
    await server.stop();
  }
}
