import { relative } from "node:path";
import { MigrationRefused, migrateDatabase } from "#prisma/migrate";
import { fail } from "./fail";

const file = process.argv[2];
if (file === undefined) throw new RangeError("migrate requires the path of a database, got none");

try {
  const { applied, copy } = migrateDatabase(file);
  if (copy !== null)
    console.log(`Copied the database to ${relative(process.cwd(), copy)} before changing it`);
  if (applied.length > 0) console.log(`Migrated ${relative(process.cwd(), file)}: ${applied.join(", ")}`);
} catch (error) {
  if (!(error instanceof MigrationRefused)) throw error;
  fail(error.message);
}
