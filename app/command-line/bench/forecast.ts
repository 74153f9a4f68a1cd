import type { Measurement } from "../measurement";
import { forecastAccuracy } from "./forecast/forecast-accuracy";
import { forecastSpeed } from "./forecast/forecast-speed";
import { shopForecastSpeed } from "./forecast/shop-forecast-speed";

/** Forecasts: how close they come, how often they were enough, and how long they take. */
export async function measure(): Promise<Measurement[]> {
  return [...forecastAccuracy(), ...forecastSpeed(), ...shopForecastSpeed()];
}
