import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { afterEach, describe, expect, it, vi } from "vitest";
import { keepForecastFresh } from "../../../app/server/fresh-forecast.mjs";

let server: Server | undefined;
afterEach(() => {
  vi.restoreAllMocks();
  server?.closeAllConnections();
  server?.close();
});

/** Answers with a status; resolves with the first address that was asked for. */
async function asked(status: number): Promise<string> {
  let stop = (): void => {};
  const url = await new Promise<string>((resolve) => {
    const answering = createServer((request, response) => {
      response.writeHead(status).end("{}", () => resolve(request.url ?? ""));
    });
    answering.listen(0, "127.0.0.1", () => {
      stop = keepForecastFresh((answering.address() as AddressInfo).port);
    });
    server = answering;
  });
  stop();
  return url;
}

describe("forecast kept fresh", () => {
  it("is asked for as soon as the server answers", async () => {
    expect(await asked(200)).toBe("/api/forecast");
  });

  it("is no error where the shop is not set up yet", async () => {
    const errors = vi.spyOn(console, "error").mockImplementation(() => {});
    await asked(404);
    await new Promise((resolve) => setImmediate(resolve));
    expect(errors).not.toHaveBeenCalled();
  });

  it("says on the console when it could not be worked out", async () => {
    const said = new Promise<string>((resolve) => {
      vi.spyOn(console, "error").mockImplementation((words: string) => resolve(words));
    });
    await asked(500);
    expect(await said).toContain("status 500");
  });
});
