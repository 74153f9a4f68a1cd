import { headers } from "next/headers";
import { redirect } from "next/navigation";
import type { Day } from "#lib/units/day";
import { type Instant, instantOfTime, shopDay } from "#lib/units/instant";
import { type Database, database } from "#prisma/client";
import type { Recorder } from "#prisma/records/ledger";
import { type Shop, shopOf } from "#prisma/records/shop";
import { houseDevice } from "./house-device";
import { seenVersion } from "./seen-version";

/** What every screen starts from: the open database, the shop, the moment and the shop's day. */
export type ShopNow = {
  readonly db: Database;
  readonly shop: Shop;
  readonly now: Instant;
  readonly today: Day;
  /** What is written, as of before anything was read: for `FollowsRecords`. */
  readonly version: string;
};

/**
 * The shop and its day. Before the shop is set up the visitor is sent to the first steps.
 *
 * @returns the shop as it stands now
 */
export async function shopNow(): Promise<ShopNow> {
  const db = await database();
  const version = await seenVersion(db);
  const shop = await shopOf(db);
  if (shop === null) redirect("/setup");
  const now = instantOfTime(Date.now());
  return { db, shop, now, today: shopDay(now, shop.timeZone), version };
}

/**
 * Who records, and when: a paired device by its name, the machine itself by the kind of its browser.
 *
 * @param now the moment of the request
 * @returns the recorder that the ledger names
 */
export async function recorderOf(now: Instant): Promise<Recorder> {
  const paired = await houseDevice();
  if (paired !== null) return { device: paired, now };
  const agent = (await headers()).get("user-agent") ?? "";
  return { device: /Mobi|Android|iPhone|iPad/.test(agent) ? "phone" : "desk", now };
}
