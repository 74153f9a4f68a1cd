import { databaseFile } from "#prisma/client";
import { type ImportConnection, openImportConnection } from "#prisma/records/import/import-connection";

/** Opens a connection for one piece of work on imports and closes it again. */
export function withImportConnection<T>(work: (db: ImportConnection) => T): T {
  const db = openImportConnection(databaseFile());
  try {
    return work(db);
  } finally {
    db.close();
  }
}
