import { resolve } from "node:path";
import { root } from "./root.mjs";

/** Path of the database: WADDING_DATABASE, or data/wadding.db in the project's folder. */
export function databaseFile() {
  return resolve(root, process.env.WADDING_DATABASE ?? "data/wadding.db");
}
