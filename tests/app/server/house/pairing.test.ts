import { describe, expect, it } from "vitest";
import {
  deviceWith,
  EMPTY_HOUSE,
  withDevice,
  withDeviceSeen,
  withoutDevice,
  withPairing,
} from "../../../../app/server/house/pairing.mjs";

const NOW = Date.parse("2026-11-26T09:00:00.000Z");
const TEN_MINUTES_MS = 600_000;

function pairedHouse(name = "Packing phone", house = EMPTY_HOUSE) {
  const made = withPairing(house, NOW);
  const outcome = withDevice(made.house, { code: made.pairing.code, name, now: NOW });
  if (outcome.kind !== "paired") throw new Error(`expected a paired device, got ${outcome.kind}`);
  return outcome;
}

function wrongFor(code: string): string {
  return code === "00000000" ? "00000001" : "00000000";
}

describe("a pairing code", () => {
  it("is eight digits and differs from the one before", () => {
    const codes = Array.from({ length: 50 }, () => withPairing(EMPTY_HOUSE, NOW).pairing.code);
    for (const code of codes) expect(code).toMatch(/^\d{8}$/);
    expect(new Set(codes).size).toBeGreaterThan(45);
  });

  it("lets one device in, and no second", () => {
    const made = withPairing(EMPTY_HOUSE, NOW);
    const asked = { code: made.pairing.code, name: "Phone", now: NOW };
    const first = withDevice(made.house, asked);
    expect(first.kind).toBe("paired");
    expect(withDevice(first.house, asked).kind).toBe("no-code");
  });

  it("may be typed with spaces and hyphens", () => {
    const made = withPairing(EMPTY_HOUSE, NOW);
    const { code } = made.pairing;
    const typed = ` ${code.slice(0, 4)} - ${code.slice(4)} `;
    expect(withDevice(made.house, { code: typed, name: "Phone", now: NOW }).kind).toBe("paired");
  });

  it("is over after ten minutes", () => {
    const made = withPairing(EMPTY_HOUSE, NOW);
    const asked = { code: made.pairing.code, name: "Phone" };
    expect(withDevice(made.house, { ...asked, now: NOW + TEN_MINUTES_MS - 1 }).kind).toBe("paired");
    expect(withDevice(made.house, { ...asked, now: NOW + TEN_MINUTES_MS }).kind).toBe("no-code");
  });

  it("is over after five wrong ones, so that nobody can try them all", () => {
    const made = withPairing(EMPTY_HOUSE, NOW);
    const wrong = { code: wrongFor(made.pairing.code), name: "Phone", now: NOW };
    let house = made.house;
    const left: number[] = [];
    for (let tries = 0; tries < 5; tries += 1) {
      const outcome = withDevice(house, wrong);
      if (outcome.kind !== "wrong-code") throw new Error(`expected a wrong code, got ${outcome.kind}`);
      left.push(outcome.triesLeft);
      house = outcome.house;
    }
    expect(left).toEqual([4, 3, 2, 1, 0]);
    expect(withDevice(house, { ...wrong, code: made.pairing.code }).kind).toBe("no-code");
  });

  it("is over where the file does not tell until when", () => {
    const { house, pairing } = withPairing(EMPTY_HOUSE, NOW);
    const spoilt = { ...house, pairing: { ...pairing, until: "soon" } };
    expect(withDevice(spoilt, { code: pairing.code, name: "Phone", now: NOW }).kind).toBe("no-code");
  });

  it("is never empty: without one nobody gets in", () => {
    expect(withDevice(EMPTY_HOUSE, { code: "", name: "Phone", now: NOW }).kind).toBe("no-code");
  });
});

describe("a paired device", () => {
  it("is known by its token and by nothing else", () => {
    const { house, token, device } = pairedHouse();
    expect(deviceWith(house, token)).toEqual(device);
    for (const other of [null, "", `${token}x`, token.slice(1), device.tokenHash, device.id])
      expect(deviceWith(house, other)).toBeNull();
  });

  it("leaves no token in what is kept", () => {
    const { house, token } = pairedHouse();
    expect(JSON.stringify(house)).not.toContain(token);
  });

  it("is let in no more once it was sent away, and the other one still is", () => {
    const one = pairedHouse("Phone");
    const two = pairedHouse("Tablet", one.house);
    const house = withoutDevice(two.house, one.device.id);
    expect(deviceWith(house, one.token)).toBeNull();
    expect(deviceWith(house, two.token)?.name).toBe("Tablet");
  });

  it("gets a name of its own", () => {
    const one = pairedHouse("  My   phone ");
    const two = pairedHouse("My phone", one.house);
    expect([one.device.name, two.device.name]).toEqual(["My phone", "My phone 2"]);
    expect(pairedHouse("   ").device.name).toBe("device");
    expect(pairedHouse("x".repeat(99)).device.name).toHaveLength(40);
  });

  it("is never cut through a character that takes two, so that its name can be sent on", () => {
    const name = `${"x".repeat(39)}😀😀`;
    expect(pairedHouse(name).device.name).toBe(`${"x".repeat(39)}😀`);
  });

  it("is not called as the ledger calls the computer itself", () => {
    expect(pairedHouse("desk").device.name).toBe("desk 2");
    expect(pairedHouse("phone").device.name).toBe("phone 2");
  });

  it("says when it was seen last", () => {
    const { house, device } = pairedHouse();
    expect(device.lastSeenAt).toBe("2026-11-26T09:00:00.000Z");
    const later = "2026-11-29T07:00:00.000Z";
    expect(withDeviceSeen(house, device.id, later).devices[0]?.lastSeenAt).toBe(later);
  });
});
