import { dropForwarding } from "../forwarding.mjs";
import { refuse } from "../refuse.mjs";
import { isWrite } from "../request-refusal.mjs";
import { DEVICE_HEADER } from "./device-header.mjs";
import { readHouse, writeHouse } from "./house-file.mjs";
import { DEVICE_COOKIE, houseWay, PAIR } from "./house-request.mjs";
import { withDevice, withDeviceSeen } from "./pairing.mjs";
import { pairingPage } from "./pairing-page.mjs";

const OK = 200;
const SEE_OTHER = 303;
const FORBIDDEN = 403;
const TOO_LARGE = 413;
const LARGEST_FORM_BYTES = 2_000;
/** How often it is written down that a device was seen: a screen says the day, in the shop's time zone. */
const SEEN_EVERY_MS = 60 * 60_000;
/** Browsers keep a cookie for 400 days at most (RFC 6265bis, section 5.5). */
const COOKIE_LIVES_S = 400 * 24 * 60 * 60;

/** @typedef {import("node:http").IncomingMessage} IncomingMessage */
/** @typedef {import("node:http").ServerResponse} ServerResponse */
/** @typedef {(request: IncomingMessage, response: ServerResponse) => Promise<void>} Handler */

/**
 * Answers other devices of the house: lets paired ones on to the screens, pairs new ones, refuses the rest.
 *
 * @param {{ host: () => string, file: string, now: () => number, screens: Handler }} house host that a request must
 *   name; file of the paired devices; now in milliseconds since 1970; screens for who is let in
 * @returns {Handler}
 */
export function houseListener({ host, file, now, screens }) {
  return async (request, response) => {
    const { method = "GET", url = "/", headers } = request;
    const kept = readHouse(file);
    const way = houseWay({ method, url, headers }, host(), kept);
    if (way.kind === "refuse") return refuse(response, way);
    if (way.kind === "pair-first") return goTo(response, PAIR);
    if (way.kind === "pair") return pair(request, response, { file, now: now() });
    const at = now();
    if (at - Date.parse(way.device.lastSeenAt) >= SEEN_EVERY_MS) {
      writeHouse(file, withDeviceSeen(kept, way.device.id, new Date(at).toISOString()));
      const token = tokenSent(headers.cookie);
      if (token !== null) response.setHeader("set-cookie", cookie(token));
    }
    dropForwarding(headers);
    headers[DEVICE_HEADER] = encodeURIComponent(way.device.name);
    await screens(request, response);
  };
}

/**
 * @param {IncomingMessage} request
 * @param {ServerResponse} response
 * @param {{ file: string, now: number }} at
 */
async function pair(request, response, { file, now }) {
  const usual = /iPad|Tablet/.test(request.headers["user-agent"] ?? "") ? "Tablet" : "Phone";
  if (!isWrite({ method: request.method ?? "GET", url: PAIR, headers: {} })) {
    const code = new URL(request.url ?? PAIR, "http://house").searchParams.get("code") ?? "";
    return page(response, OK, { code, name: usual, problem: null });
  }
  const text = await textOf(request);
  if (text === null)
    return refuse(response, { status: TOO_LARGE, words: "That is more than a code and a name" });
  const form = new URLSearchParams(text);
  const [code, name] = [form.get("code") ?? "", form.get("name") ?? usual];
  const kept = readHouse(file);
  const outcome = withDevice(kept, { code, name, now });
  // Who is not let in writes nothing where no code holds: open screens follow this file.
  if (outcome.house !== kept) writeHouse(file, outcome.house);
  if (outcome.kind === "paired") {
    response.setHeader("set-cookie", cookie(outcome.token));
    return goTo(response, "/");
  }
  return page(response, FORBIDDEN, { code: "", name, problem: problemWords(outcome) });
}

/** @param {Exclude<import("./pairing.mjs").PairingOutcome, { kind: "paired" }>} outcome */
function problemWords(outcome) {
  if (outcome.kind === "wrong-code" && outcome.triesLeft > 0) {
    const tries = outcome.triesLeft === 1 ? "one more try" : `${outcome.triesLeft} more tries`;
    return `That is not the code. ${tries[0]?.toUpperCase()}${tries.slice(1)}, then it needs a new one.`;
  }
  return "No code holds now: it was used, is older than ten minutes, or was typed wrong too often. Make a new one on the computer.";
}

/**
 * @param {ServerResponse} response
 * @param {number} status
 * @param {Parameters<typeof pairingPage>[0]} shown
 */
function page(response, status, shown) {
  response.writeHead(status, {
    "content-type": "text/html; charset=utf-8",
    "cache-control": "no-store",
    "content-security-policy":
      "default-src 'none'; style-src 'unsafe-inline'; form-action 'self'; frame-ancestors 'none'",
  });
  response.end(pairingPage(shown));
}

/**
 * @param {ServerResponse} response
 * @param {string} address
 */
function goTo(response, address) {
  response.writeHead(SEE_OTHER, { location: address, "cache-control": "no-store" });
  response.end();
}

/** @param {string} token */
function cookie(token) {
  return `${DEVICE_COOKIE}=${token}; Path=/; HttpOnly; SameSite=Lax; Max-Age=${COOKIE_LIVES_S}`;
}

/** @param {string | undefined} cookies */
function tokenSent(cookies) {
  return new RegExp(`(?:^|;\\s*)${DEVICE_COOKIE}=([\\w-]+)`).exec(cookies ?? "")?.[1] ?? null;
}

/**
 * @param {IncomingMessage} request
 * @returns {Promise<string | null>} null where it is too long
 */
async function textOf(request) {
  let text = "";
  for await (const chunk of request) {
    text += chunk;
    if (text.length > LARGEST_FORM_BYTES) return null;
  }
  return text;
}
