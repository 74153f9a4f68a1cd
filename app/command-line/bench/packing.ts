import type { Measurement } from "../measurement";
import { stepLearning } from "./packing/step-learning";
import { weightAccuracy } from "./packing/weight-accuracy";
import { weightDrifts } from "./packing/weight-drifts";

/** Packing: what parcels weigh and what recipes really take, learned from shops whose truth is known. */
export function measure(): Promise<Measurement[]> {
  return Promise.resolve([...weightAccuracy(), ...weightDrifts(), ...stepLearning()]);
}
