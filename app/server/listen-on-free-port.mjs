const PORTS_TRIED = 50;

/** @typedef {{ address: string, server: import("node:http").Server }} AddressedServer */

/**
 * Lets servers listen, each on its address, all on the same port.
 *
 * @param {readonly AddressedServer[]} servers at least one; where any port will do (0), the first one's is taken
 * @param {{ port: number, exactly: boolean }} wanted exactly: this port or none; else the next free one
 * @returns {Promise<number>} the port that they listen on
 * @throws {Error} when no port was free on all addresses
 */
export async function listenOnFreePort(servers, { port, exactly }) {
  const last = exactly ? port : port + PORTS_TRIED;
  for (let candidate = port; candidate <= last; candidate += 1) {
    const found = await allListen(servers, candidate);
    if (found !== null) return found;
  }
  const words = exactly ? `Port ${port} is in use` : `The ports ${port} to ${last} are all in use`;
  throw new Error(`${words}. Choose another with --port.`);
}

/**
 * @param {readonly AddressedServer[]} servers
 * @param {number} candidate
 * @returns {Promise<number | null>} the port; null where one of the addresses does not have it free, and none listens
 */
async function allListen(servers, candidate) {
  let port = candidate;
  /** @type {import("node:http").Server[]} */
  const open = [];
  for (const { address, server } of servers) {
    if (!(await listens(server, port, address))) {
      await Promise.all(open.map((each) => new Promise((resolve) => each.close(resolve))));
      return null;
    }
    open.push(server);
    port = portOf(server);
  }
  return port;
}

/**
 * @param {import("node:http").Server} server
 * @param {number} port
 * @param {string} address
 * @returns {Promise<boolean>} false where the port is taken
 */
function listens(server, port, address) {
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
    server.listen(port, address);
  });
}

/** @param {import("node:http").Server} server */
function portOf(server) {
  const address = server.address();
  if (address === null || typeof address === "string")
    throw new TypeError("portOf requires a listening server");
  return address.port;
}
