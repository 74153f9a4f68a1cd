import { createServer, type Server } from "node:http";
import { afterEach, describe, expect, it } from "vitest";
import { listenOnFreePort } from "../../../app/server/listen-on-free-port.mjs";

const servers: Server[] = [];

function server(): Server {
  const made = createServer();
  servers.push(made);
  return made;
}

afterEach(() => {
  for (const each of servers.splice(0)) each.close();
});

describe("listenOnFreePort", () => {
  it("takes the next port where the wanted one is taken", async () => {
    const taken = await listenOnFreePort(server(), { port: 0, exactly: true });
    const next = await listenOnFreePort(server(), { port: taken, exactly: false });
    expect(next).toBeGreaterThan(taken);
  });

  it("refuses in words where exactly a taken port is wanted", async () => {
    const taken = await listenOnFreePort(server(), { port: 0, exactly: true });
    await expect(listenOnFreePort(server(), { port: taken, exactly: true })).rejects.toThrow(
      `Port ${taken} is in use. Choose another with --port.`,
    );
  });

  it("listens on this machine's loopback address only", async () => {
    const listening = server();
    await listenOnFreePort(listening, { port: 0, exactly: true });
    expect(listening.address()).toMatchObject({ address: "127.0.0.1" });
  });
});
