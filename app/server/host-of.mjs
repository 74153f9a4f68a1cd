/** Browsers leave it out of the Host that they name. */
const HTTP_PORT = 80;

/**
 * @param {string} address
 * @param {number} port
 * @returns {string} how browsers name this server: "192.168.1.5:3000"
 */
export function hostOf(address, port) {
  return port === HTTP_PORT ? address : `${address}:${port}`;
}
