import { createServer, type Server } from "node:http";
import { afterEach, describe, expect, it } from "vitest";
import { listenOnFreePort } from "../../../app/server/listen-on-free-port.mjs";

const servers: Server[] = [];

function server(address = "127.0.0.1") {
  const made = createServer();
  servers.push(made);
  return { address, server: made };
}

afterEach(() => {
  for (const each of servers.splice(0)) each.close();
});

describe("listenOnFreePort", () => {
  it("takes the next port where the wanted one is taken", async () => {
    const taken = await listenOnFreePort([server()], { port: 0, exactly: true });
    const next = await listenOnFreePort([server()], { port: taken, exactly: false });
    expect(next).toBeGreaterThan(taken);
  });

  it("refuses in words where exactly a taken port is wanted", async () => {
    const taken = await listenOnFreePort([server()], { port: 0, exactly: true });
    await expect(listenOnFreePort([server()], { port: taken, exactly: true })).rejects.toThrow(
      `Port ${taken} is in use. Choose another with --port.`,
    );
  });

  it("listens on the address that was named, and no other", async () => {
    const listening = server();
    await listenOnFreePort([listening], { port: 0, exactly: true });
    expect(listening.server.address()).toMatchObject({ address: "127.0.0.1" });
  });

  it("takes one port for all addresses, and passes over one that is taken on the second", async () => {
    const taken = await listenOnFreePort([server("127.0.0.2")], { port: 0, exactly: true });
    const [first, second] = [server(), server("127.0.0.2")];
    const port = await listenOnFreePort([first, second], { port: taken, exactly: false });
    expect(port).toBeGreaterThan(taken);
    expect(first.server.address()).toMatchObject({ address: "127.0.0.1", port });
    expect(second.server.address()).toMatchObject({ address: "127.0.0.2", port });
  });
});
