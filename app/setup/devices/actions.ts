"use server";

import { revalidatePath } from "next/cache";
import { done, type FormState, refused } from "../../_parts/form-state";
import { houseDevice } from "../../_parts/house-device";
import { readHouse, writeHouse } from "../../server/house/house-file.mjs";
import { withoutDevice, withPairing } from "../../server/house/pairing.mjs";
import { devicesFile } from "./devices-file";

const ONLY_HERE = "Devices are paired and sent away on the computer itself, on which wadding runs.";

/** Makes a code with which one device is let in. */
export async function pairDevice(before: FormState, form: FormData): Promise<FormState> {
  // An action answers under any address: what a paired device must not do is refused here.
  if ((await houseDevice()) !== null) return refused(before, form, { "": ONLY_HERE });
  const file = devicesFile();
  writeHouse(file, withPairing(readHouse(file), Date.now()).house);
  revalidatePath("/setup/devices");
  return done(before, "The code is made.");
}

/** Sends a device away: from now on it is asked to be paired. */
export async function sendDeviceAway(id: string, before: FormState, form: FormData): Promise<FormState> {
  if ((await houseDevice()) !== null) return refused(before, form, { "": ONLY_HERE });
  const file = devicesFile();
  writeHouse(file, withoutDevice(readHouse(file), id));
  revalidatePath("/setup/devices");
  return done(before, "It is let in no more.");
}
