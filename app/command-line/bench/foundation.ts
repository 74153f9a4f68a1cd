import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Measurement } from "../measurement";
import { generatedShop } from "./foundation/generated-shop";
import { importSpeed } from "./foundation/import-speed";
import { pageWeights } from "./foundation/page-weights";
import { recordSpeed } from "./foundation/record-speed";
import { withServer } from "./foundation/with-server";
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
    const served = await withServer(large, async (url) => [...(await recordSpeed(url)), ...(await pageWeights(url))]);
    return [...checks, ...served, ...(await importSpeed(folder, MANY))];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
