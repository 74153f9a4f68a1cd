const VERSION_BYTE = 6;
const VARIANT_BYTE = 8;
const KEY_BYTES = 16;
const GROUP_ENDS = [8, 12, 16, 20, 32];

/**
 * The key of a parcel, made where it is packed: a random UUID (version 4) from sixteen random bytes.
 * `crypto.randomUUID` is not there on a page served over plain HTTP in the house, `getRandomValues` is.
 * @param fillRandom fills the array with random bytes
 * @returns 36 characters
 * @see RFC 9562, section 5.4
 */
export function parcelKey(fillRandom: (bytes: Uint8Array) => void): string {
  const bytes = new Uint8Array(KEY_BYTES);
  fillRandom(bytes);
  const digits = Array.from(bytes, (byte, index) => marked(byte, index).toString(16).padStart(2, "0")).join(
    "",
  );
  return GROUP_ENDS.map((end, index) => digits.slice(GROUP_ENDS[index - 1] ?? 0, end)).join("-");
}

function marked(byte: number, index: number): number {
  if (index === VERSION_BYTE) return (byte & 0x0f) | 0x40;
  if (index === VARIANT_BYTE) return (byte & 0x3f) | 0x80;
  return byte;
}
