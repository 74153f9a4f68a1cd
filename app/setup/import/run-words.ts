import type { ImportRun } from "#prisma/records/import/import-runs";

/** "1 parcel", "3,187 parcels". */
export function parcelsWords(count: number): string {
  return `${count.toLocaleString("en-US")} ${count === 1 ? "parcel" : "parcels"}`;
}

/**
 * Where an import stands, in one sentence.
 *
 * @example runWords(run) // "Booked 3,187 parcels."
 */
export function runWords(run: ImportRun): string {
  switch (run.state) {
    case "uploaded":
      return "Choose which column is which.";
    case "reading":
      return "Reading the file…";
    case "asking":
      return "Some texts are not known yet.";
    case "ready":
      return readyWords(run);
    case "committing":
      return "Booking…";
    case "committed":
      return committedWords(run);
    case "refused":
      return "Refused. Nothing was booked.";
    case "cancelled":
      return "Cancelled. Nothing was booked.";
    default:
      return run.state satisfies never;
  }
}

function readyWords(run: ImportRun): string {
  if (run.newParcels + run.changedParcels === 0) return "All parcels of this file are booked already.";
  if (run.changedParcels === 0) return `${parcelsWords(run.newParcels)} would be booked.`;
  return `${parcelsWords(run.newParcels)} would be booked and ${parcelsWords(run.changedParcels)} changed.`;
}

function committedWords(run: ImportRun): string {
  if (run.newParcels + run.changedParcels === 0) return "Nothing to book: all parcels were known.";
  if (run.changedParcels === 0) return `Booked ${parcelsWords(run.newParcels)}.`;
  return `Booked ${parcelsWords(run.newParcels)} and changed ${parcelsWords(run.changedParcels)}.`;
}
