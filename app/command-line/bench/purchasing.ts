import type { Measurement } from "../measurement";
import { planSpeed } from "./purchasing/plan-speed";
import { rollingYear } from "./purchasing/rolling-year";

/** Purchasing: how good a plan is proven to be in the time that a seller waits, and what it does in a year. */
export async function measure(): Promise<Measurement[]> {
  return [...(await planSpeed()), ...(await rollingYear())];
}
