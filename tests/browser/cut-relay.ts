import { once } from "node:events";
import { request as ask, createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";

/** What befalls requests on their way. What is lost or held is a parcel that is sent; other requests pass then. */
export type Cut =
  | "none"
  /** Every connection is closed before a word is said. */
  | "refused"
  /** Only parcels get through, in both directions. */
  | "all-but-parcels"
  /** The program gets the parcel; its answer is lost. */
  | "answer-lost"
  /** The parcel hangs before it reaches the program. */
  | "request-held"
  /** The program gets the parcel; its answer hangs. */
  | "answer-held"
  /** Another program answers in its place. */
  | "stranger";

/** A parcel as it came by, and what the program answered; 0 while it has not. */
export type PassedParcel = { readonly id: string; readonly body: string; status: number };

/** A connection that can be cut. */
export type CutRelay = {
  readonly url: string;
  cut: Cut;
  /** Every sending that reached the program, in order. */
  readonly passed: PassedParcel[];
  /** Sendings that came as far as here, also those that never reached the program. */
  readonly arrived: string[];
  readonly close: () => Promise<void>;
};

/**
 * Stands between a browser and the program, at an address of its own. The program answers only to this machine, so the
 * relay speaks to it as this machine; its pages and their origin are the relay's.
 *
 * @param host address to listen at
 * @param target address of the program
 */
export async function cutRelay(host: string, target: string): Promise<CutRelay> {
  const server = createServer((request, response) => void relayed(relay, target, request, response));
  server.listen(0, host);
  await once(server, "listening");
  const { port } = server.address() as AddressInfo;
  const relay: CutRelay = {
    url: `http://${host}:${port}`,
    cut: "none",
    passed: [],
    arrived: [],
    close: async () => {
      const closed = once(server, "close");
      server.close();
      server.closeAllConnections();
      await closed;
    },
  };
  return relay;
}

async function relayed(
  relay: CutRelay,
  target: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const { cut } = relay;
  const isParcel = request.method === "POST" && request.url === "/api/parcels";
  if (cut === "refused" || (cut === "all-but-parcels" && !isParcel)) {
    request.socket.destroy();
    return;
  }
  if (cut === "stranger") {
    response.writeHead(404, { "content-type": "text/html" }).end("<h1>Another program</h1>");
    return;
  }
  const body = await textOf(request);
  const parcel: PassedParcel | null = isParcel ? { id: JSON.parse(body).id, body, status: 0 } : null;
  if (parcel !== null) relay.arrived.push(parcel.id);
  if (parcel !== null && cut === "request-held") return;
  if (parcel !== null) relay.passed.push(parcel);
  const answer = await answerOf(target, request, body);
  if (parcel !== null) parcel.status = answer.status;
  if (parcel !== null && cut === "answer-lost") request.socket.destroy();
  else if (parcel === null || cut !== "answer-held")
    response.writeHead(answer.status, answer.headers).end(answer.body);
}

type Answer = {
  readonly status: number;
  readonly headers: IncomingMessage["headers"];
  readonly body: Buffer;
};

function answerOf(target: string, { method, url, headers }: IncomingMessage, body: string): Promise<Answer> {
  const { host, origin, connection: _, ...others } = headers;
  const own = { ...others, host: new URL(target).host, ...(origin === undefined ? {} : { origin: target }) };
  return new Promise((resolve, reject) => {
    const asking = ask(new URL(url ?? "/", target), { method, headers: own }, async (answer) => {
      const { connection: _one, "transfer-encoding": _other, ...kept } = answer.headers;
      resolve({ status: answer.statusCode ?? 0, headers: kept, body: await bytesOf(answer) });
    });
    asking.once("error", reject);
    asking.end(body);
  });
}

async function textOf(stream: IncomingMessage): Promise<string> {
  return (await bytesOf(stream)).toString("utf8");
}

async function bytesOf(stream: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(part as Buffer);
  return Buffer.concat(parts);
}
