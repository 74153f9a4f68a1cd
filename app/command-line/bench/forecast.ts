import type { Measurement } from "../measurement";
import { forecastSpeed } from "./forecast/forecast-speed";

/** The forecasting library: how long it takes to try every method on many series. */
export async function measure(): Promise<Measurement[]> {
  return forecastSpeed();
}
