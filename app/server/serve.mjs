import { createServer } from "node:http";
import { keepForecastFresh } from "./fresh-forecast.mjs";
import { listenOnFreePort } from "./listen-on-free-port.mjs";
import { requestRefusal } from "./request-refusal.mjs";

const GRACE_MS = 3_000;

/** @typedef {(request: import("node:http").IncomingMessage, response: import("node:http").ServerResponse) => Promise<void>} Handler */
/** @typedef {{ port: number, close: () => Promise<void> }} Serving */

/**
 * Serves the built screens on this machine only.
 *
 * @param {{ folder: string, port: number, exactly: boolean }} options folder of the project; exactly: this port
 *   or none, else the next free one
 * @returns {Promise<Serving>} once the first request can be answered
 */
export async function serve({ folder, port: wanted, exactly }) {
  /** @type {(handler: Handler) => void} */
  let ready = () => {};
  /** @type {Promise<Handler>} */
  const handler = new Promise((resolve) => {
    ready = resolve;
  });
  let port = 0;
  const server = createServer(async (request, response) => {
    const { method = "GET", url = "/", headers } = request;
    const refusal = requestRefusal({ method, url, headers }, port);
    if (refusal !== null) {
      refuse(response, refusal);
      return;
    }
    dropForwarding(headers);
    await (await handler)(request, response);
  });
  server.on("upgrade", (_request, socket) => socket.destroy());
  port = await listenOnFreePort(server, { port: wanted, exactly });
  const screens = await builtScreens(folder, port);
  ready(screens.handler);
  const stopForecasts = keepForecastFresh(port);
  return {
    port,
    close: () => {
      stopForecasts();
      return close(server, screens.close);
    },
  };
}

/**
 * @param {string} folder
 * @param {number} port
 * @returns {Promise<{ handler: Handler, close: () => Promise<void> }>}
 */
async function builtScreens(folder, port) {
  const { default: next } = await import("next");
  const app = next({ dev: false, dir: folder, hostname: "127.0.0.1", port });
  await app.prepare();
  return { handler: app.getRequestHandler(), close: () => app.close() };
}

/**
 * @param {import("node:http").ServerResponse} response
 * @param {import("./request-refusal.mjs").Refusal} refusal
 */
function refuse(response, { status, words }) {
  response.writeHead(status, { "content-type": "text/plain; charset=utf-8", connection: "close" });
  response.end(`${words}\n`);
}

/**
 * Nothing stands in front of this server, so what claims to be forwarded is not believed.
 *
 * @param {import("node:http").IncomingHttpHeaders} headers
 */
function dropForwarding(headers) {
  for (const name of Object.keys(headers)) {
    if (name === "forwarded" || name.startsWith("x-forwarded-")) delete headers[name];
  }
}

/**
 * Lets running requests end, for a while, then stops.
 *
 * @param {import("node:http").Server} server
 * @param {() => Promise<void>} closeScreens
 */
async function close(server, closeScreens) {
  const closed = new Promise((resolve) => server.close(resolve));
  server.closeIdleConnections();
  const grace = setTimeout(() => server.closeAllConnections(), GRACE_MS);
  await closed;
  clearTimeout(grace);
  await closeScreens();
}
