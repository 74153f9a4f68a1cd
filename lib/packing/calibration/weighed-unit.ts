import { type Calibration, calibration } from "#lib/packing/calibration/calibration";

/** Film and paper of one sort come in weights up to twice as heavy as one another. */
const SPAN = { least: 0.4, most: 2.5 };

/**
 * The mass of one use unit, from several weighed at once (ten torn pieces, a pile of sheets).
 *
 * @param weighed - milligrams on the scale and of the tray; whole or part use units, above zero
 * @param replacesMg - the mass in use so far, in milligrams
 * @returns whole milligrams of one use unit, with what it replaces
 * @throws RangeError if the scale shows no more than the tray, or a number is not above zero
 * @see computed from the formula
 * @example weighedUnit({ grossMg: 46450, trayMg: 0, units: 10 }, 4645).value // 4645
 */
export function weighedUnit(
  weighed: { readonly grossMg: number; readonly trayMg: number; readonly units: number },
  replacesMg: number,
): Calibration {
  const { grossMg, trayMg, units } = weighed;
  if (!(trayMg >= 0 && grossMg > trayMg && units > 0)) {
    throw new RangeError(
      `weighedUnit requires more than the tray and units above zero, got ${grossMg}, ${trayMg} and ${units}`,
    );
  }
  return calibration(Math.round((grossMg - trayMg) / units), replacesMg, SPAN);
}
