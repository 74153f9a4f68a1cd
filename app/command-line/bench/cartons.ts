import type { Measurement } from "../measurement";
import { fitSpeed } from "./cartons/fit-speed";
import { rangeSpeed } from "./cartons/range-speed";

/** Cartons: whether pieces fit, how fast that is known, which of many is the smallest, which sizes to keep. */
export async function measure(): Promise<Measurement[]> {
  return [...fitSpeed(), ...(await rangeSpeed())];
}
