import { createServer } from "node:http";
import { dropForwarding } from "./forwarding.mjs";
import { keepForecastFresh } from "./fresh-forecast.mjs";
import { hostOf } from "./host-of.mjs";
import { DEVICE_HEADER } from "./house/device-header.mjs";
import { houseFile } from "./house/house-file.mjs";
import { houseListener } from "./house/house-listener.mjs";
import { listenOnFreePort } from "./listen-on-free-port.mjs";
import { refuse } from "./refuse.mjs";
import { requestRefusal } from "./request-refusal.mjs";

const GRACE_MS = 3_000;
const LOOPBACK = "127.0.0.1";

/** @typedef {(request: import("node:http").IncomingMessage, response: import("node:http").ServerResponse) => Promise<void>} Handler */
/** @typedef {{ addresses: readonly string[], database: string }} Shared addresses in the house; path of the database */
/** @typedef {{ port: number, close: () => Promise<void> }} Serving */

/** @type {Shared} */
const NOT_SHARED = { addresses: [], database: "" };

/**
 * Serves the built screens: to this machine, and where they are shared also to paired devices of the house.
 *
 * @param {{ folder: string, port: number, exactly: boolean, shared?: Shared }} options folder of the project; exactly:
 *   this port or none, else the next free one
 * @returns {Promise<Serving>} once the first request can be answered
 */
export async function serve({ folder, port: wanted, exactly, shared = NOT_SHARED }) {
  /** @type {(handler: Handler) => void} */
  let ready = () => {};
  /** @type {Promise<Handler>} */
  const handler = new Promise((resolve) => {
    ready = resolve;
  });
  let port = 0;
  /** @type {Handler} */
  const screens = async (request, response) => {
    // On this machine no log-in stands before the buttons: no page elsewhere may show them as its own.
    response.setHeader("content-security-policy", "frame-ancestors 'none'");
    await (await handler)(request, response);
  };
  /** @type {Handler} */
  const fromHere = async (request, response) => {
    const { method = "GET", url = "/", headers } = request;
    const refusal = requestRefusal({ method, url, headers }, port);
    if (refusal !== null) return refuse(response, refusal);
    dropForwarding(headers);
    delete headers[DEVICE_HEADER];
    await screens(request, response);
  };
  const listeners = [
    { address: LOOPBACK, listener: fromHere },
    ...shared.addresses.map((address) => ({
      address,
      listener: houseListener({
        host: () => hostOf(address, port),
        file: houseFile(shared.database),
        now: Date.now,
        screens,
      }),
    })),
  ];
  const servers = listeners.map(({ address, listener }) => ({ address, server: serverOf(listener) }));
  port = await listenOnFreePort(servers, { port: wanted, exactly });
  const built = await builtScreens(folder, port);
  ready(built.handler);
  const stopForecasts = keepForecastFresh(port);
  return {
    port,
    close: async () => {
      stopForecasts();
      await Promise.all(servers.map(({ server }) => close(server)));
      await built.close();
    },
  };
}

/** @param {Handler} listener */
function serverOf(listener) {
  const server = createServer(async (request, response) => {
    try {
      await listener(request, response);
    } catch (error) {
      console.error(error);
      if (response.headersSent) response.destroy();
      else
        refuse(response, {
          status: 500,
          words: "The program failed; its own words are where it was started",
        });
    }
  });
  server.on("upgrade", (_request, socket) => socket.destroy());
  return server;
}

/**
 * @param {string} folder
 * @param {number} port
 * @returns {Promise<{ handler: Handler, close: () => Promise<void> }>}
 */
async function builtScreens(folder, port) {
  const { default: next } = await import("next");
  const app = next({ dev: false, dir: folder, hostname: LOOPBACK, port });
  await app.prepare();
  return { handler: app.getRequestHandler(), close: () => app.close() };
}

/**
 * Lets running requests end, for a while, then stops.
 *
 * @param {import("node:http").Server} server
 */
async function close(server) {
  const closed = new Promise((resolve) => server.close(resolve));
  server.closeIdleConnections();
  const grace = setTimeout(() => server.closeAllConnections(), GRACE_MS);
  await closed;
  clearTimeout(grace);
}
