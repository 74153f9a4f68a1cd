import { Readable } from "node:stream";
import { Zip, ZipDeflate } from "fflate";
import { closeDatabase, openDatabase } from "#prisma/client";
import { exportTable, exportTables } from "#prisma/records/export";

/**
 * Every table as one ZIP archive of CSV files, `Supply.csv` and so on, each as `exportTable` writes it.
 * All of them are read as they stood at one moment, so that a parcel that is recorded meanwhile is in none.
 *
 * @param file path of the database
 * @returns a stream of bytes; the archive never stands in memory as a whole
 * @see PKWARE APPNOTE.TXT, .ZIP File Format Specification
 * @example exportArchive(databaseFile()).pipe(download)
 */
export function exportArchive(file: string): Readable {
  return Readable.from(archiveBytes(file), { objectMode: false });
}

async function* archiveBytes(file: string): AsyncGenerator<Uint8Array> {
  // A connection of its own: a transaction on the program's one would show every screen this moment too.
  const db = await openDatabase(file);
  try {
    await db.$executeRawUnsafe("BEGIN");
    const ready: Uint8Array[] = [];
    const archive = new Zip((error, bytes) => {
      if (error !== null) throw error;
      ready.push(bytes);
    });
    for (const table of exportTables) {
      const entry = new ZipDeflate(`${table}.csv`);
      archive.add(entry);
      for await (const text of exportTable(db, table)) {
        entry.push(Buffer.from(text));
        yield* ready.splice(0);
      }
      entry.push(new Uint8Array(), true);
      yield* ready.splice(0);
    }
    archive.end();
    yield* ready;
  } finally {
    await closeDatabase(db);
  }
}
