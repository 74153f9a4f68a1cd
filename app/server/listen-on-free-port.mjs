const LOOPBACK = "127.0.0.1";
const PORTS_TRIED = 50;

/**
 * Lets a server listen on this machine's loopback address.
 *
 * @param {import("node:http").Server} server
 * @param {{ port: number, exactly: boolean }} wanted exactly: this port or none; else the next free one
 * @returns {Promise<number>} the port that it listens on
 * @throws {Error} when no port was free
 */
export async function listenOnFreePort(server, { port, exactly }) {
  const last = exactly ? port : port + PORTS_TRIED;
  for (let candidate = port; candidate <= last; candidate += 1) {
    if (await listens(server, candidate)) return portOf(server);
  }
  const words = exactly ? `Port ${port} is in use` : `The ports ${port} to ${last} are all in use`;
  throw new Error(`${words}. Choose another with --port.`);
}

/**
 * @param {import("node:http").Server} server
 * @param {number} port
 * @returns {Promise<boolean>} false where the port is taken
 */
function listens(server, port) {
  return new Promise((resolve, reject) => {
    /** @param {NodeJS.ErrnoException} error */
    const failed = (error) => {
      server.off("listening", listening);
      if (error.code === "EADDRINUSE") resolve(false);
      else reject(error);
    };
    const listening = () => {
      server.off("error", failed);
      resolve(true);
    };
    server.once("error", failed);
    server.once("listening", listening);
    server.listen(port, LOOPBACK);
  });
}

/** @param {import("node:http").Server} server */
function portOf(server) {
  const address = server.address();
  if (address === null || typeof address === "string")
    throw new TypeError("portOf requires a listening server");
  return address.port;
}
