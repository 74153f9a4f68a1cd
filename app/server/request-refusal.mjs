import { hostOf } from "./host-of.mjs";

const READING = new Set(["GET", "HEAD", "OPTIONS"]);

export const MISDIRECTED = 421;
export const FORBIDDEN = 403;

/** @typedef {{ method: string, url: string, headers: import("node:http").IncomingHttpHeaders }} Request */
/** @typedef {{ status: number, words: string }} Refusal */

/**
 * @param {Request} request
 * @returns {boolean} whether it may change something
 */
export function isWrite({ method }) {
  return !READING.has(method);
}

/**
 * Why a request from this machine itself must not reach the program, which asks for no log-in there.
 * A page elsewhere on the web can make the browser send requests to this machine: one under a name of its
 * own (answered only under this machine's names), or a form post (a write must come from the program's own
 * pages). Scripts on this machine send neither Origin nor Sec-Fetch-Site and are let through.
 *
 * @param {Request} request
 * @param {number} port that the server listens on
 * @returns {Refusal | null} null for a request that is fine
 */
export function requestRefusal(request, port) {
  const { host, origin, "sec-fetch-site": site } = request.headers;
  const hosts = ownHosts(port);
  if (host === undefined || !hosts.includes(host.toLowerCase()) || !request.url.startsWith("/")) {
    return { status: MISDIRECTED, words: `This server answers only as http://127.0.0.1:${port}` };
  }
  if (!isWrite(request)) return null;
  const fromElsewhere =
    origin !== undefined && !hosts.some((own) => origin.toLowerCase() === `http://${own}`);
  const saysElsewhere = site !== undefined && site !== "same-origin" && site !== "none";
  if (fromElsewhere || saysElsewhere) {
    return { status: FORBIDDEN, words: "Only this program's own pages may change its data" };
  }
  return null;
}

/**
 * @param {number} port
 * @returns {string[]}
 */
function ownHosts(port) {
  const names = ["127.0.0.1", "localhost", "[::1]"];
  return [...new Set(names.flatMap((name) => [`${name}:${port}`, hostOf(name, port)]))];
}
