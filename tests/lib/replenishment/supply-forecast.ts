import type { SupplyForecast } from "#lib/forecast/shop/subject-forecast";
import { day } from "#lib/units/day";

/**
 * An invented forecast of so many use units a week without any error, changed as the test wants. Its weeks begin long
 * before any test's day.
 */
export function supplyForecast(perWeek: number, changes: Partial<SupplyForecast> = {}): SupplyForecast {
  return {
    path: { firstWeek: day("2026-06-01"), perWeek: [perWeek] },
    spread: { perUse: 0, dispersions: [0], whole: false },
    method: "pieces by their recipes",
    weeksSeen: 25,
    guessedShare: 0,
    likeId: null,
    correction: { kind: "none" },
    ...changes,
  };
}
