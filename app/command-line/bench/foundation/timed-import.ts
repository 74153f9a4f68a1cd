import { importParcels } from "../../../import/import-parcels";

/**
 * Imports a file in a process of its own, as the program does, and prints how it went:
 * `timed-import.ts <database> <file> <source>`.
 */
const [database = "", file = "", source = ""] = process.argv.slice(2);
const began = performance.now();
const outcome = await importParcels(database, file, { source, mapping: "guess", createMissing: true });
const seconds = (performance.now() - began) / 1_000;
// Kibibytes on every system (Node.js documentation, process.resourceUsage).
const peakBytes = process.resourceUsage().maxRSS * 1_024;
process.stdout.write(
  JSON.stringify({ kind: outcome.kind, newParcels: outcome.newParcels, seconds, peakBytes }),
);
