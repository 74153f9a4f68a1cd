import { backupDatabase } from "#prisma/backup";
import { databaseFile } from "#prisma/client";
import { fail } from "./fail";

const stamp = new Date().toISOString().slice(0, 19).replace(/[-:]/g, "");
const target = process.argv[2] ?? `data/backup-${stamp}.db`;
const result = await backupDatabase(databaseFile(), target);

switch (result.kind) {
  case "backed-up": {
    const rows = result.tables.reduce((sum, table) => sum + table.rows, 0);
    console.log(`Backed up ${rows} rows in ${result.tables.length} tables to ${result.file}.`);
    console.log("Read back and compared: every table is equal to the database.");
    break;
  }
  case "no-database":
    fail(`There is no database at ${result.file}.`);
    break;
  case "target-exists":
    fail(`${result.file} exists already; a backup never writes over a file. Give another name.`);
    break;
  default:
    result satisfies never;
}
