import { FORBIDDEN, isWrite, MISDIRECTED } from "../request-refusal.mjs";
import { deviceWith } from "./pairing.mjs";

/** The cookie that holds a paired device's token. */
export const DEVICE_COOKIE = "wadding-device";
/** Where a device is paired. */
export const PAIR = "/pair";

const UNAUTHORIZED = 401;

/** @typedef {import("../request-refusal.mjs").Request} Request */
/** @typedef {{ kind: "pass", device: import("./pairing.mjs").Device }
 *   | { kind: "pair" } | { kind: "pair-first" }
 *   | { kind: "refuse", status: number, words: string }} HouseWay */

/**
 * What becomes of a request from another device of the house. It must name this machine's own address (no other name
 * can be made to mean it), come from a paired device, and, where it changes something, from the program's own page:
 * the browser says so in Origin. Without Origin only JSON is taken, with the token in Authorization, where no other
 * site's page can put it.
 *
 * @param {Request} request
 * @param {string} host that the request must name: "192.168.1.5:3000"
 * @param {import("./pairing.mjs").House} house
 * @returns {HouseWay}
 */
export function houseWay(request, host, house) {
  const { headers, url } = request;
  if (headers.host !== host || !url.startsWith("/")) {
    return { kind: "refuse", status: MISDIRECTED, words: `This server answers here only as http://${host}` };
  }
  const refusal = isWrite(request) ? writeRefusal(headers, host) : null;
  if (refusal !== null) return { kind: "refuse", status: FORBIDDEN, words: refusal };
  if (url === PAIR || url.startsWith(`${PAIR}?`)) return { kind: "pair" };
  const device = deviceWith(house, tokenOf(headers));
  if (device !== null) return { kind: "pass", device };
  const isScreen = !isWrite(request) && (headers.accept ?? "").includes("text/html");
  if (isScreen) return { kind: "pair-first" };
  return { kind: "refuse", status: UNAUTHORIZED, words: "This device is not paired. Open /pair on it." };
}

/**
 * @param {import("node:http").IncomingHttpHeaders} headers
 * @param {string} host
 */
function writeRefusal(headers, host) {
  const { origin, "sec-fetch-site": site } = headers;
  if (site !== undefined && site !== "same-origin")
    return "Only this program's own pages may change its data";
  if (origin !== undefined) {
    return origin === `http://${host}` ? null : "Only this program's own pages may change its data";
  }
  const isJson = /^application\/json\s*(;|$)/i.test(headers["content-type"] ?? "");
  return isJson && bearerOf(headers) !== null
    ? null
    : "Without an Origin only JSON is taken, with the device's token as Authorization: Bearer";
}

/** @param {import("node:http").IncomingHttpHeaders} headers */
function tokenOf(headers) {
  // A write without Origin was let through for its bearer: no cookie may stand in for it.
  return bearerOf(headers) ?? cookieOf(headers);
}

/** @param {import("node:http").IncomingHttpHeaders} headers */
function bearerOf(headers) {
  return /^Bearer\s+(\S+)$/i.exec(headers.authorization ?? "")?.[1] ?? null;
}

/** @param {import("node:http").IncomingHttpHeaders} headers */
function cookieOf(headers) {
  for (const pair of (headers.cookie ?? "").split(";")) {
    const [name, value] = pair.trim().split("=");
    if (name === DEVICE_COOKIE && value !== undefined && value !== "") return value;
  }
  return null;
}
