import { closeDatabase, databaseFile, openDatabase } from "#prisma/client";
import { proveRollUps, rebuildRollUps } from "#prisma/records/roll-ups";

const db = await openDatabase(databaseFile());
try {
  const before = await rebuildRollUps(db);
  if (before.equal) {
    console.log("equal: on hand and the daily figures already were what the ledger adds up to");
  } else {
    for (const difference of before.differences) console.log(difference);
    const after = await proveRollUps(db);
    console.log(
      after.equal
        ? `Rebuilt: ${before.differences.length} figures differed and are now equal to the ledger`
        : `Rebuilt, and ${after.differences.length} figures still differ: please report this`,
    );
    process.exitCode = after.equal ? 0 : 1;
  }
} finally {
  await closeDatabase(db);
}
