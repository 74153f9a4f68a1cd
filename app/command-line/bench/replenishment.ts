import type { Measurement } from "../measurement";
import { exactLevels } from "./replenishment/exact-levels";
import { reorderPoints } from "./replenishment/reorder-points";
import { shortHistory } from "./replenishment/short-history";
import { thisWeekSpeed } from "./replenishment/this-week-speed";

/** Reorder points: whether they keep what they promise, played many times; and how long the screen takes. */
export async function measure(): Promise<Measurement[]> {
  return [...reorderPoints(), ...shortHistory(), ...exactLevels(), ...(await thisWeekSpeed())];
}
