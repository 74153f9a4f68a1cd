import { restoreDatabase } from "#prisma/backup";
import { databaseFile } from "#prisma/client";
import { fail } from "./fail";

const backup = process.argv[2];
if (backup === undefined) fail("Say which backup to restore: npm run restore -- FILE");
else restore(backup);

function restore(from: string): void {
  const result = restoreDatabase(from, databaseFile(), new Date());
  switch (result.kind) {
    case "restored": {
      const rows = result.tables.reduce((sum, table) => sum + table.rows, 0);
      console.log(`Restored ${rows} rows in ${result.tables.length} tables, equal to the backup.`);
      if (result.replaced !== null) console.log(`What stood there before is kept as ${result.replaced}.`);
      break;
    }
    case "no-backup":
      fail(`There is no file ${result.file}. Nothing was changed.`);
      break;
    case "unreadable":
      fail(`${result.file} cannot be restored: ${result.reason}. Nothing was changed.`);
      break;
    case "in-use":
      fail(`${result.file} is open in a running program: stop it first. Nothing was changed.`);
      break;
    default:
      result satisfies never;
  }
}
