import { describe, expect, it } from "vitest";
import { requestRefusal } from "../../../app/server/request-refusal.mjs";

const PORT = 3000;
const HOST = "127.0.0.1:3000";

function statusOf(method: string, headers: Record<string, string>, url = "/api/parcels") {
  return requestRefusal({ method, url, headers }, PORT)?.status ?? "let through";
}

describe("a request's Host", () => {
  it.each(["127.0.0.1:3000", "localhost:3000", "LOCALHOST:3000", "[::1]:3000"])("may be %s", (host) => {
    expect(statusOf("GET", { host })).toBe("let through");
  });

  it.each(["shop.example:3000", "127.0.0.1:3001", "localhost", "127.0.0.1.shop.example:3000", ""])(
    "may not be %j, under which another site could speak",
    (host) => {
      expect(statusOf("GET", { host })).toBe(421);
    },
  );

  it("must be there", () => {
    expect(statusOf("GET", {})).toBe(421);
  });

  it("needs no port where the server listens on the port that browsers leave out", () => {
    expect(requestRefusal({ method: "GET", url: "/", headers: { host: "localhost" } }, 80)).toBeNull();
  });

  it("cannot be got round by a whole address in the request line", () => {
    expect(statusOf("GET", { host: HOST }, "http://shop.example/")).toBe(421);
  });
});

describe("a write", () => {
  it.each(["POST", "PUT", "PATCH", "DELETE"])("by %s from another site is refused", (method) => {
    expect(statusOf(method, { host: HOST, origin: "https://shop.example" })).toBe(403);
  });

  it.each(["http://127.0.0.1:3000", "http://localhost:3000"])(
    "from the program's own page at %s is let through",
    (origin) => {
      expect(statusOf("POST", { host: HOST, origin, "sec-fetch-site": "same-origin" })).toBe("let through");
    },
  );

  it.each(["null", "http://127.0.0.1:5000", "https://127.0.0.1:3000", "http://127.0.0.1:3000.shop.example"])(
    "from the origin %s is refused",
    (origin) => {
      expect(statusOf("POST", { host: HOST, origin })).toBe(403);
    },
  );

  it.each(["cross-site", "same-site"])(
    "that the browser calls %s is refused, whatever else it says",
    (site) => {
      expect(statusOf("POST", { host: HOST, "sec-fetch-site": site })).toBe(403);
      expect(statusOf("POST", { host: HOST, origin: "http://127.0.0.1:3000", "sec-fetch-site": site })).toBe(
        403,
      );
    },
  );

  it("from a script on this machine, which sends neither header, is let through", () => {
    expect(statusOf("POST", { host: HOST })).toBe("let through");
  });

  it("by an unknown method counts as a write", () => {
    expect(statusOf("PURGE", { host: HOST, origin: "https://shop.example" })).toBe(403);
  });
});

describe("a read", () => {
  it("that follows a link on another site is let through", () => {
    expect(statusOf("GET", { host: HOST, "sec-fetch-site": "cross-site" })).toBe("let through");
  });
});
