import { describe, expect, it } from "vitest";
import { houseWay } from "../../../../app/server/house/house-request.mjs";
import { EMPTY_HOUSE, withDevice, withPairing } from "../../../../app/server/house/pairing.mjs";

const HOST = "192.168.1.5:3000";
const ORIGIN = `http://${HOST}`;
const NOW = Date.parse("2026-11-26T09:00:00.000Z");

const made = withPairing(EMPTY_HOUSE, NOW);
const paired = withDevice(made.house, { code: made.pairing.code, name: "Phone", now: NOW });
if (paired.kind !== "paired") throw new Error("expected a paired device");
const { house, token } = paired;
const cookie = `theme=dark; wadding-device=${token}`;
const bearer = `Bearer ${token}`;

function wayOf(method: string, headers: Record<string, string>, url = "/api/parcels") {
  const way = houseWay({ method, url, headers: { host: HOST, ...headers } }, HOST, house);
  return way.kind === "refuse" ? way.status : way.kind;
}

describe("a device that is not paired", () => {
  it("is shown the way to be paired where it asks for a screen", () => {
    expect(wayOf("GET", { accept: "text/html,*/*" }, "/")).toBe("pair-first");
  });

  it.each(["/pair", "/pair?code=12345678"])("may open %s", (url) => {
    expect(wayOf("GET", { accept: "text/html" }, url)).toBe("pair");
  });

  it.each(["/pairing", "/pair/../api/parcels", "/pair/x", "//pair"])("does not get past by %s", (url) => {
    expect(wayOf("GET", {}, url)).toBe(401);
  });

  it.each(["/api/parcels", "/api/export", "/api/backup", "/_next/static/chunk.js", "/?_rsc=1"])(
    "reads nothing at %s",
    (url) => {
      expect(wayOf("GET", {}, url)).toBe(401);
      expect(wayOf("GET", { cookie: "wadding-device=made-up" }, url)).toBe(401);
      expect(wayOf("GET", { cookie: "wadding-device=" }, url)).toBe(401);
      expect(wayOf("GET", { authorization: "Bearer made-up" }, url)).toBe(401);
    },
  );

  it("writes nothing, from the program's page or not", () => {
    expect(wayOf("POST", { origin: ORIGIN, "content-type": "application/json" })).toBe(401);
    expect(
      wayOf("POST", { authorization: "Bearer made-up", cookie, "content-type": "application/json" }),
    ).toBe(401);
  });
});

describe("a paired device", () => {
  it("reads and writes from the program's own pages", () => {
    expect(wayOf("GET", { cookie })).toBe("pass");
    expect(wayOf("POST", { cookie, origin: ORIGIN, "sec-fetch-site": "same-origin" })).toBe("pass");
  });

  it.each([
    "https://shop.example",
    "null",
    "http://192.168.1.5:3001",
    "http://192.168.1.6:3000",
    "https://192.168.1.5:3000",
    "http://127.0.0.1:3000",
  ])("writes nothing for a page of %s", (origin) => {
    expect(wayOf("POST", { cookie, origin })).toBe(403);
    expect(wayOf("POST", { cookie, origin }, "/pair")).toBe(403);
  });

  it.each(["cross-site", "same-site", "none"])("writes nothing that the browser calls %s", (site) => {
    expect(wayOf("POST", { cookie, origin: ORIGIN, "sec-fetch-site": site })).toBe(403);
  });

  it("may send JSON without Origin, with its token in Authorization", () => {
    const json = { authorization: bearer, "content-type": "application/json; charset=utf-8" };
    expect(wayOf("POST", json)).toBe("pass");
  });

  it("may send nothing else without Origin, nor with its cookie alone", () => {
    expect(wayOf("POST", { authorization: bearer, "content-type": "text/plain" })).toBe(403);
    expect(wayOf("POST", { authorization: bearer, "content-type": "application/jsonp" })).toBe(403);
    expect(wayOf("POST", { authorization: bearer })).toBe(403);
    expect(wayOf("POST", { cookie, "content-type": "application/json" })).toBe(403);
    expect(wayOf("DELETE", { cookie })).toBe(403);
  });
});

describe("a request under another name", () => {
  it.each(["shop.example", "shop.example:3000", "127.0.0.1:3000", "192.168.1.5", "localhost:3000"])(
    "is not answered as %s, paired or not",
    (host) => {
      expect(wayOf("GET", { host, cookie })).toBe(421);
      expect(wayOf("GET", { host }, "/pair")).toBe(421);
    },
  );

  it("cannot be got round by a whole address in the request line", () => {
    expect(wayOf("GET", { cookie }, "http://shop.example/")).toBe(421);
  });
});
