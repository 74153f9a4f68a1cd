/** Time for a plan unless the environment says otherwise. */
const USUAL_SECONDS = 5;
const MOST_SECONDS = 60;

/**
 * Seconds that a purchase plan may take: `WADDING_PLAN_SECONDS`, for machines that are slower or busier than most.
 *
 * @param text the setting as it stands in the environment
 * @returns seconds; the usual ones where nothing is set
 * @throws RangeError when it is no number from 0 to 60
 * @example planSeconds(undefined) // 5
 */
export function planSeconds(text: string | undefined): number {
  if (text === undefined || text === "") return USUAL_SECONDS;
  const seconds = Number(text);
  if (!(seconds >= 0 && seconds <= MOST_SECONDS)) {
    throw new RangeError(`WADDING_PLAN_SECONDS must be a number from 0 to ${MOST_SECONDS}, got “${text}”`);
  }
  return seconds;
}

/**
 * The seconds that this machine's setting gives a plan.
 *
 * @throws RangeError when the setting can't be read
 */
export function planSecondsHere(): number {
  return planSeconds(process.env["WADDING_PLAN_SECONDS"]);
}
