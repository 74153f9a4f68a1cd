import { parcelKey } from "./parcel-key";

/** A new key, from this browser's random bytes. */
export function newParcelKey(): string {
  return parcelKey((bytes) => {
    crypto.getRandomValues(bytes as Uint8Array<ArrayBuffer>);
  });
}
