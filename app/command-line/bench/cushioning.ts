import type { Measurement } from "../measurement";
import { comparisonSpeed } from "./cushioning/comparison-speed";
import { mixSpeed } from "./cushioning/mix-speed";
import { pageSpeed } from "./cushioning/page-speed";

/** Paper or bubble: how quick all ways are compared, and how good a purchase is proven to be in the time that a seller waits. */
export async function measure(): Promise<Measurement[]> {
  return [...comparisonSpeed(), ...(await pageSpeed()), ...(await mixSpeed())];
}
