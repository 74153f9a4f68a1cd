import { randomUUID } from "node:crypto";
import { type Measurement, measurement, nearestRank } from "../../measurement";
import { GENERATED_TODAY } from "./generated-shop";

const WARM_UPS = 100;
const RUNS = 500;
const TARGET_MS = 25;
const SHARE = 0.95;
const CREATED = 201;

/**
 * The time to record a parcel, as a screen sends it, one after the other.
 *
 * @param url address of the program
 */
export async function recordSpeed(url: string): Promise<Measurement[]> {
  const times: number[] = [];
  for (let run = 0; run < WARM_UPS + RUNS; run += 1) {
    const time = await recordOne(url, run);
    if (run >= WARM_UPS) times.push(time);
  }
  const value = nearestRank(times, SHARE);
  return [
    measurement({
      area: "foundation",
      name: "record a parcel (95 of 100)",
      value,
      unit: "ms",
      target: TARGET_MS,
    }),
  ];
}

/**
 * Records one parcel.
 *
 * @param url address of the program
 * @param run number of the parcel; decides what is in it
 * @returns milliseconds from sending to the whole answer
 * @throws Error where it was not recorded
 */
export async function recordOne(url: string, run: number): Promise<number> {
  const body = JSON.stringify({
    id: randomUUID(),
    packedOn: GENERATED_TODAY,
    style: "paper",
    pieces: [{ itemTypeId: `item-${run % 10}`, pieces: 1 + (run % 3) }],
    orders: [{ reference: `bench-${run}` }],
    zoneId: `zone-${run % 4}`,
  });
  const began = performance.now();
  const response = await fetch(`${url}/api/parcels`, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body,
  });
  const text = await response.text();
  const time = performance.now() - began;
  if (response.status !== CREATED) throw new Error(`Recording answered ${response.status}: ${text}`);
  return time;
}
