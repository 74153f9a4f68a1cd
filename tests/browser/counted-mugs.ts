import { day } from "#lib/units/day";
import { backupDatabase } from "#prisma/backup";
import { countedShop } from "../prisma/records/counted-shop";
import { shopFixture } from "../prisma/records/shop-fixture";

// Run on its own, before a server is started on the file: a shop whose card says 11 sheets for a mug, of which each has
// really taken 13 in every week between two counts. Arguments: the file, the day of the first count.
const [file, firstCount] = process.argv.slice(2);
if (file === undefined || firstCount === undefined)
  throw new RangeError("counted-mugs requires a file and a day, got fewer");

const shop = await shopFixture();
try {
  await countedShop(shop.db, 13, day(firstCount));
  const backup = await backupDatabase(shop.file, file);
  if (backup.kind !== "backed-up") throw new Error(`The shop could not be put into its file: ${backup.kind}`);
} finally {
  await shop.close();
}
