import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { startServer } from "../../set-up/start-server.mjs";
import { GENERATED_TODAY, generatedShop } from "../foundation/generated-shop";

const PARCELS = 10_000;
const RUNS = 15;
const TARGET_COLD_MS = 1_000;
const TARGET_WARM_MS = 150;
const PLAN_MS = 60_000;
const ASK_EVERY_MS = 500;
const MEDIAN = 0.5;

/**
 * How long This week takes with 60 supplies: with nothing kept, then the first time of a server that has just started
 * beside a kept forecast, then while the plan is worked out and once it is there.
 */
export async function thisWeekSpeed(): Promise<Measurement[]> {
  const folder = mkdtempSync(join(tmpdir(), "wadding-bench-"));
  try {
    const file = join(folder, "shop.db");
    await generatedShop(file, PARCELS);
    const anew = await served(file, async (page) => page());
    return await served(file, async (page, url) => {
      const cold = await page();
      await planReady(url);
      const warm: number[] = [];
      for (let run = 0; run < RUNS; run += 1) warm.push(await page());
      return [
        of("with no forecast kept", anew, null),
        of("from a server just started", cold, TARGET_COLD_MS),
        of("later, with its plan (median)", nearestRank(warm, MEDIAN), TARGET_WARM_MS),
      ];
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function of(name: string, value: number, target: number | null): Measurement {
  return measurement({
    area: "replenishment",
    name: `This week, 60 supplies, ${name}`,
    value,
    unit: "ms",
    target,
  });
}

async function served<T>(
  file: string,
  work: (page: () => Promise<number>, url: string) => Promise<T>,
): Promise<T> {
  const server = await startServer(file);
  try {
    return await work(async () => {
      const began = performance.now();
      const answer = await fetch(`${server.url}/?today=${GENERATED_TODAY}`);
      if (!answer.ok) throw new Error(`This week answered ${answer.status}`);
      await answer.text();
      return performance.now() - began;
    }, server.url);
  } finally {
    await server.stop();
  }
}

async function planReady(url: string): Promise<void> {
  const until = performance.now() + PLAN_MS;
  while (performance.now() < until) {
    const answer = await fetch(`${url}/api/purchase-plan?today=${GENERATED_TODAY}`);
    const { kind } = (await answer.json()) as { readonly kind: string };
    if (kind !== "working") return;
    await new Promise((resolve) => setTimeout(resolve, ASK_EVERY_MS));
  }
  throw new Error("The purchase plan was not there in time");
}
