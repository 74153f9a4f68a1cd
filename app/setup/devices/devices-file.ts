import { databaseFile } from "#prisma/client";
import { houseFile } from "../../server/house/house-file.mjs";

/** Where the paired devices of the house are kept. */
export function devicesFile(): string {
  return houseFile(databaseFile());
}
