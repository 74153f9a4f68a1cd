const USUAL_PORT = 3000;
const LAST_PORT = 65_535;

/**
 * The port to serve on: one that was asked for is taken exactly, or else 3000 or the next free one.
 *
 * @param {string | undefined} text as typed; "0" is any free port
 * @returns {{ port: number, exactly: boolean }}
 * @throws {RangeError} when the text is not a port
 */
export function wantedPort(text) {
  if (text === undefined || text === "") return { port: USUAL_PORT, exactly: false };
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > LAST_PORT) {
    throw new RangeError(`A port is a whole number from 0 to ${LAST_PORT}, not "${text}"`);
  }
  return { port, exactly: true };
}
