import type { SeasonKind, SmoothingState } from "#lib/forecast/methods/smoothing";

/**
 * A state in another unit: level, trend and added seasons times a number; seasons that are factors stay.
 *
 * @param state level, trend and seasons
 * @param by above 0
 * @param season kind
 * @example scaledState({ level: 2, trend: 1, seasons: [] }, 10, "none") // { level: 20, trend: 10, seasons: [] }
 */
export function scaledState(state: SmoothingState, by: number, season: SeasonKind): SmoothingState {
  return {
    level: state.level * by,
    trend: state.trend * by,
    seasons: season === "multiplicative" ? state.seasons : state.seasons.map((each) => each * by),
  };
}
