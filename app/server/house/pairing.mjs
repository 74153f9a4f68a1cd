import { createHash, randomBytes, randomInt, timingSafeEqual } from "node:crypto";

/** @typedef {{ id: string, name: string, tokenHash: string, pairedAt: string, lastSeenAt: string }} Device */
/** @typedef {{ code: string, until: string, triesLeft: number }} Pairing a code that lets one device in */
/** @typedef {{ devices: readonly Device[], pairing: Pairing | null }} House */
/** @typedef {{ kind: "paired", house: House, token: string, device: Device }
 *   | { kind: "wrong-code", house: House, triesLeft: number }
 *   | { kind: "no-code", house: House }} PairingOutcome */

const CODE_DIGITS = 8;
const CODE_LIVES_MS = 10 * 60_000;
const TRIES = 5;
const TOKEN_BYTES = 32;
const ID_BYTES = 9;
const LONGEST_NAME = 40;
/** What the ledger calls records that no paired device made. */
const TAKEN_NAMES = ["desk", "phone", "import", "shop file"];

/** @type {House} */
export const EMPTY_HOUSE = { devices: [], pairing: null };

/**
 * A fresh code in the place of any other: eight digits, for one device, for ten minutes, for five tries.
 *
 * @param {House} house
 * @param {number} now milliseconds since 1970
 * @returns {{ house: House, pairing: Pairing }}
 */
export function withPairing(house, now) {
  const code = String(randomInt(10 ** CODE_DIGITS)).padStart(CODE_DIGITS, "0");
  const pairing = { code, until: new Date(now + CODE_LIVES_MS).toISOString(), triesLeft: TRIES };
  return { house: { ...house, pairing }, pairing };
}

/**
 * Pairs a device that shows the code. The code is used up by it, by five wrong ones, or by time.
 *
 * @param {House} house
 * @param {{ code: string, name: string, now: number }} asked code as typed (spaces and hyphens do not matter); now in
 *   milliseconds since 1970
 * @returns {PairingOutcome} with the house as it stands afterwards
 */
export function withDevice(house, { code, name, now }) {
  const { pairing } = house;
  if (pairing === null) return { kind: "no-code", house };
  // A time that can't be read is over.
  if (!(Date.parse(pairing.until) > now)) return { kind: "no-code", house: { ...house, pairing: null } };
  if (!isSame(code.replace(/[\s-]/g, ""), pairing.code)) {
    const triesLeft = pairing.triesLeft - 1;
    return {
      kind: "wrong-code",
      triesLeft,
      house: { ...house, pairing: triesLeft > 0 ? { ...pairing, triesLeft } : null },
    };
  }
  const token = randomBytes(TOKEN_BYTES).toString("base64url");
  const at = new Date(now).toISOString();
  const device = {
    id: randomBytes(ID_BYTES).toString("base64url"),
    name: deviceName(name, house.devices),
    tokenHash: hashOf(token),
    pairedAt: at,
    lastSeenAt: at,
  };
  return { kind: "paired", token, device, house: { devices: [...house.devices, device], pairing: null } };
}

/**
 * The device that holds a token.
 *
 * @param {House} house
 * @param {string | null} token
 * @returns {Device | null} null for a token that was never given out, or of a device that was sent away
 */
export function deviceWith(house, token) {
  if (token === null) return null;
  const hash = hashOf(token);
  return house.devices.find((device) => isSame(device.tokenHash, hash)) ?? null;
}

/**
 * @param {House} house
 * @param {string} id
 * @returns {House} without the device: its token opens nothing any more
 */
export function withoutDevice(house, id) {
  return { ...house, devices: house.devices.filter((device) => device.id !== id) };
}

/**
 * @param {House} house
 * @param {string} id
 * @param {string} at an instant
 * @returns {House} with the instant at which the device was seen last
 */
export function withDeviceSeen(house, id, at) {
  return {
    ...house,
    devices: house.devices.map((device) => (device.id === id ? { ...device, lastSeenAt: at } : device)),
  };
}

/**
 * @param {string} name
 * @param {readonly Device[]} devices
 */
function deviceName(name, devices) {
  // By whole characters: half a one can't be written into a header.
  const wanted = Array.from(name.trim().replace(/\s+/g, " ")).slice(0, LONGEST_NAME).join("") || "device";
  const taken = new Set([...TAKEN_NAMES, ...devices.map((device) => device.name)]);
  let candidate = wanted;
  for (let number = 2; taken.has(candidate); number += 1) candidate = `${wanted} ${number}`;
  return candidate;
}

/** @param {string} token */
function hashOf(token) {
  return createHash("sha256").update(token).digest("hex");
}

/**
 * Takes as long for a text that is nearly right as for one that is wrong from the start.
 *
 * @param {string} one
 * @param {string} other
 */
function isSame(one, other) {
  return timingSafeEqual(
    createHash("sha256").update(one).digest(),
    createHash("sha256").update(other).digest(),
  );
}
