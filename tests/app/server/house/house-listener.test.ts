import { existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createServer, type IncomingMessage, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { houseFile, readHouse, writeHouse } from "../../../../app/server/house/house-file.mjs";
import { houseListener } from "../../../../app/server/house/house-listener.mjs";
import { EMPTY_HOUSE, withPairing } from "../../../../app/server/house/pairing.mjs";

const NOW = Date.parse("2026-11-26T09:00:00.000Z");
const HOUR_MS = 3_600_000;

let folder = "";
let file = "";
let server: Server;
let origin = "";
let now = NOW;
let reached: { readonly url: string; readonly device: string | undefined; readonly forwarded: boolean }[] =
  [];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), "wadding-house-"));
  file = houseFile(join(folder, "shop.db"));
  now = NOW;
  reached = [];
  let host = "";
  server = createServer(
    houseListener({
      host: () => host,
      file,
      now: () => now,
      screens: async (request: IncomingMessage, response) => {
        reached.push({
          url: request.url ?? "",
          device: request.headers["x-wadding-device"] as string | undefined,
          forwarded: "x-forwarded-for" in request.headers,
        });
        response.end("the screens");
      },
    }),
  );
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  host = `127.0.0.1:${(server.address() as AddressInfo).port}`;
  origin = `http://${host}`;
});

afterEach(() => {
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

function freshCode(): string {
  const { house, pairing } = withPairing(readHouse(file), now);
  writeHouse(file, house);
  return pairing.code;
}

function ask(path: string, init: RequestInit = {}): Promise<Response> {
  return fetch(`${origin}${path}`, { redirect: "manual", ...init });
}

function sendCode(code: string, name = "Packing phone"): Promise<Response> {
  return ask("/pair", {
    method: "POST",
    headers: { origin },
    body: new URLSearchParams({ code, name }),
  });
}

function cookieOf(answer: Response): string {
  return answer.headers.get("set-cookie")?.split(";")[0] ?? "";
}

describe("pairing a device", () => {
  it("goes from the screens to the pairing page, by the code to a cookie, and with it to the screens", async () => {
    const first = await ask("/pack", { headers: { accept: "text/html" } });
    expect([first.status, first.headers.get("location")]).toEqual([303, "/pair"]);
    const code = freshCode();
    const shown = await ask(`/pair?code=${code}`);
    expect(await shown.text()).toContain(`value="${code}"`);
    const paired = await sendCode(code);
    expect([paired.status, paired.headers.get("location")]).toEqual([303, "/"]);
    expect(paired.headers.get("set-cookie")).toMatch(/; Path=\/; HttpOnly; SameSite=Lax; Max-Age=34560000$/);
    expect(reached).toEqual([]);
    const cookie = cookieOf(paired);
    const inside = await ask("/pack", {
      headers: { cookie, "x-wadding-device": "somebody else", "x-forwarded-for": "127.0.0.1" },
    });
    expect(await inside.text()).toBe("the screens");
    expect(reached).toEqual([{ url: "/pack", device: "Packing%20phone", forwarded: false }]);
  });

  it("says how many tries are left, then that no code holds", async () => {
    const code = freshCode();
    const wrong = code === "00000000" ? "00000001" : "00000000";
    const words: string[] = [];
    for (let tries = 0; tries < 5; tries += 1) {
      const answer = await sendCode(wrong);
      expect([answer.status, answer.headers.get("set-cookie")]).toEqual([403, null]);
      words.push(/role="alert">([^<]*)</.exec(await answer.text())?.[1] ?? "");
    }
    expect(words[0]).toBe("That is not the code. 4 more tries, then it needs a new one.");
    expect(words[3]).toBe("That is not the code. One more try, then it needs a new one.");
    expect(words[4]).toMatch(/^No code holds now/);
    expect((await sendCode(code)).status).toBe(403);
  });

  it("shows what was typed as text, never as part of the page", async () => {
    const page = await (await ask(`/pair?code=${encodeURIComponent('"><script>x</script>')}`)).text();
    expect(page).not.toContain("<script>");
    expect(page).toContain("&lt;script&gt;");
  });

  it("lets a device in whose name is cut at a character that takes two", async () => {
    const cookie = cookieOf(await sendCode(freshCode(), `${"x".repeat(39)}😀`));
    expect((await ask("/pack", { headers: { cookie } })).status).toBe(200);
    expect(decodeURIComponent(reached[0]?.device ?? "")).toBe(`${"x".repeat(39)}😀`);
  });

  it("writes nothing for who sends a code where none holds", async () => {
    expect((await sendCode("12345678")).status).toBe(403);
    expect(existsSync(file)).toBe(false);
  });

  it("reads no form that is longer than a code and a name", async () => {
    freshCode();
    const answer = await sendCode("1", "x".repeat(5000));
    expect(answer.status).toBe(413);
    expect(readHouse(file).devices).toEqual([]);
  });
});

describe("a device that was sent away", () => {
  it("reads and writes nothing more", async () => {
    const cookie = cookieOf(await sendCode(freshCode()));
    writeHouse(file, EMPTY_HOUSE);
    expect((await ask("/api/parcels", { headers: { cookie } })).status).toBe(401);
    expect((await ask("/api/parcels", { method: "POST", headers: { cookie, origin } })).status).toBe(401);
    expect(reached).toEqual([]);
  });
});

describe("what is kept of the devices", () => {
  it("is readable by the owner alone, and holds no token", async () => {
    const cookie = cookieOf(await sendCode(freshCode()));
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(readFileSync(file, "utf8")).not.toContain(cookie.split("=")[1]);
    expect(existsSync(`${file}.new`)).toBe(false);
  });

  it("says when a device was seen last, once an hour, and renews its cookie then", async () => {
    const cookie = cookieOf(await sendCode(freshCode()));
    now = NOW + HOUR_MS - 1;
    expect((await ask("/", { headers: { cookie } })).headers.get("set-cookie")).toBeNull();
    now = NOW + HOUR_MS;
    const next = await ask("/", { headers: { cookie } });
    expect(cookieOf(next)).toBe(cookie);
    expect(readHouse(file).devices[0]?.lastSeenAt).toBe("2026-11-26T10:00:00.000Z");
  });

  it("lets nobody in where it can't be read, and says what to do", () => {
    writeFileSync(file, "{");
    expect(() => readHouse(file)).toThrow(/can't be read. Delete it and pair the devices of the house anew/);
  });
});
