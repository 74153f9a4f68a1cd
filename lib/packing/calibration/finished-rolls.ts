import { type Calibration, calibration } from "#lib/packing/calibration/calibration";

/** Movers close 8 to 10 cartons with a roll that would do for 50: six times theory. Less than theory is a miscount. */
const SPAN = { least: 0.8, most: 7 };

/**
 * Tape used over tape in theory, from rolls that were finished and the cartons closed meanwhile.
 *
 * @param finished - whole rolls from 1, their length in micrometres, and the theory of all cartons closed meanwhile
 * @returns the factor, with the theory (1) as what it is judged by
 * @throws RangeError if a number is not above zero
 * @see movers' rule of one roll for 8 to 10 cartons: a moving firm's page; the rest is computed
 * @example finishedRolls({ rolls: 1, rollUm: 100584000, theoryUm: 50292000 }).value // 2
 */
export function finishedRolls(finished: {
  readonly rolls: number;
  readonly rollUm: number;
  readonly theoryUm: number;
}): Calibration {
  const { rolls, rollUm, theoryUm } = finished;
  if (!(Number.isSafeInteger(rolls) && rolls >= 1 && rollUm > 0 && theoryUm > 0)) {
    throw new RangeError(
      `finishedRolls requires whole rolls and lengths above zero, got ${rolls}, ${rollUm} and ${theoryUm}`,
    );
  }
  return calibration((rolls * rollUm) / theoryUm, 1, SPAN);
}
