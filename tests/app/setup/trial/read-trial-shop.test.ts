import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { playTrial } from "#app/setup/trial/play-trial.ts";
import { readTrialShop } from "#app/setup/trial/read-trial-shop.ts";
import { settingsOf } from "#app/setup/trial/trial-form.ts";
import { amountOfUnits } from "#lib/units/amount";
import { day } from "#lib/units/day";
import { saveClosedSpan } from "#prisma/records/closed-spans";
import { shopOf } from "#prisma/records/shop";
import { saveOffer, saveSupplier } from "#prisma/records/suppliers";
import { type ShopFixture, shopFixture } from "../../../prisma/records/shop-fixture";

const TODAY = day("2026-11-25");

let fixture: ShopFixture;
beforeAll(async () => {
  fixture = await shopFixture();
  const { db } = fixture;
  await saveSupplier(db, {
    id: "mill",
    name: "Mill",
    leadTimeDays: 4,
    deliveryMinor: 900,
    freeDeliveryMinor: 20_000,
    leastOrderMinor: 2_500,
  });
  await saveSupplier(db, { id: "idle", name: "Sells nothing", leadTimeDays: 2 });
  await saveOffer(db, {
    id: "bundle",
    supplyId: "paper",
    supplierId: "mill",
    pack: "bundle of 250",
    packAmount: amountOfUnits(250),
    packTyped: "250",
    priceMinor: 1_800,
    breakKind: "incremental",
    volumeMl: 30_000,
    volumeTyped: "30 l",
    retired: false,
    breaks: [{ fromPacks: 4, priceMinor: 1_500 }],
  });
  await saveClosedSpan(db, { id: "winter", fromDay: "2026-12-24", toDay: "2027-01-03", words: "Winter" });
});
afterAll(() => fixture.close());

async function read() {
  const shop = await shopOf(fixture.db);
  if (shop === null) throw new Error("the fixture has no shop");
  return { shop, trial: await readTrialShop(fixture.db, shop, TODAY) };
}

describe("the shop that a trial begins with", () => {
  it("has its supplies with offers, its suppliers' terms, its closed days and its guesses at costs", async () => {
    const { trial } = await read();
    expect(trial).toMatchObject({ today: TODAY, holdingShare: 0.2, orderCost: 0 });
    expect(trial.calendar).toEqual([{ fromDay: "2026-12-24", toDay: "2027-01-03" }]);
    expect(trial.suppliers).toEqual([
      { supplierId: "mill", delivery: { charge: 900, freeFrom: 20_000 }, leastValue: 2_500 },
    ]);
    expect(trial.supplies.find(({ supplyId }) => supplyId === "paper")?.offers).toMatchObject([
      { offerId: "bundle", breakKind: "incremental", volumeMl: 30_000, priceMinor: 1_800 },
    ]);
  });

  it("has nothing to play while nothing is used, and no past before a year is recorded", async () => {
    const { shop, trial } = await read();
    const present = settingsOf(shop);
    const tried = { ...present, reviewDays: 14 };
    expect(await playTrial(trial, { present, tried, over: "coming" })).toEqual({ kind: "nothing" });
    expect(await playTrial(trial, { present, tried, over: "past" })).toEqual({ kind: "no-past" });
  });
});
