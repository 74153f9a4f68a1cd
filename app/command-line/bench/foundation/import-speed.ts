import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { addDays } from "#lib/units/day";
import { importParcels } from "../../../import/import-parcels";
import { type Measurement, measurement } from "../../measurement";
import { GENERATED_TODAY, generatedShop } from "./generated-shop";

const TARGET_SECONDS = 90;
const DAYS = 700;
const MS_PER_SECOND = 1_000;

/**
 * The time to import a file of parcels, from reading to booked.
 *
 * @param folder where the file and the database go
 * @param rows parcels in the file
 */
export async function importSpeed(folder: string, rows: number): Promise<Measurement[]> {
  const file = join(folder, "import.db");
  await generatedShop(file, 0);
  const csv = join(folder, "parcels.csv");
  writeFileSync(csv, parcelsFile(rows));
  const began = performance.now();
  const outcome = await importParcels(file, csv, { source: "bench", mapping: "guess", createMissing: true });
  const value = (performance.now() - began) / MS_PER_SECOND;
  if (outcome.kind !== "committed" || outcome.newParcels !== rows) {
    throw new Error(`The import was ${outcome.kind} with ${outcome.newParcels} of ${rows} parcels`);
  }
  return [
    measurement({
      area: "foundation",
      name: "import of 100,000 rows",
      value,
      unit: "s",
      target: TARGET_SECONDS,
    }),
  ];
}

function parcelsFile(rows: number): string {
  const lines = Array.from({ length: rows }, (_, row) => {
    const day = addDays(GENERATED_TODAY, -(DAYS - Math.floor((row * DAYS) / rows)));
    return `${day},B${row},Zone ${row % 4},Item ${row % 10},${1 + (row % 3)}`;
  });
  return `shipped_on,order_ref,destination,item_type,pieces\n${lines.join("\n")}\n`;
}
