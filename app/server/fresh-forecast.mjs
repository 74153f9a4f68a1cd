/** How long a changed record may wait for its forecast when nobody looks. */
const EVERY_MS = 30_000;

/**
 * Keeps the forecast fresh in the background: the server asks itself for it at once and then every half minute. Where
 * nothing changed the answer is only read.
 *
 * @param {number} port on which this server answers
 * @returns {() => void} stops it
 */
export function keepForecastFresh(port) {
  let asking = false;
  let stopped = false;
  const ask = async () => {
    if (asking) return;
    asking = true;
    try {
      const answer = await fetch(`http://127.0.0.1:${port}/api/forecast`);
      await answer.arrayBuffer();
      // 404 is a shop that is not set up yet.
      if (!answer.ok && answer.status !== 404) {
        console.error(`The forecast could not be worked out (status ${answer.status}); see above.`);
      }
    } catch (error) {
      // A server that stops breaks its own question off.
      if (stopped) return;
      console.error(`The forecast could not be asked for: ${error instanceof Error ? error.message : error}`);
    } finally {
      asking = false;
    }
  };
  ask();
  const timer = setInterval(ask, EVERY_MS);
  timer.unref();
  return () => {
    stopped = true;
    clearInterval(timer);
  };
}
