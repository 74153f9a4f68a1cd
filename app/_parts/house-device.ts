import { headers } from "next/headers";
import { DEVICE_HEADER } from "../server/house/device-header.mjs";

/**
 * Which paired device of the house asks. The server writes the header itself and takes it off what clients send.
 *
 * @returns its name as given when it was paired; null for the machine itself
 */
export async function houseDevice(): Promise<string | null> {
  const named = (await headers()).get(DEVICE_HEADER);
  return named === null ? null : decodeURIComponent(named);
}
