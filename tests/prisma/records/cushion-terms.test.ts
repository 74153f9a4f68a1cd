import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { inTransaction } from "#prisma/client";
import {
  cartonSettingsOf,
  saveCartonSettings,
  saveRangeSizes,
  USUAL_CARTON_SETTINGS,
} from "#prisma/records/carton-terms";
import {
  type CushionTerms,
  cushionTermsOf,
  NO_CUSHION_TERMS,
  saveCushionTerms,
} from "#prisma/records/cushion-terms";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const OWN: CushionTerms = {
  minutes: { paper: 6.5, bubble: 4, mixed: null },
  brokenPerMille: { paper: 12, bubble: 0, mixed: null },
};

describe("what the seller says of packing in each cushion style", () => {
  it("is nothing until it is said", async () => {
    expect(await cushionTermsOf(shop.db)).toEqual(NO_CUSHION_TERMS);
    expect(Object.values(NO_CUSHION_TERMS.minutes)).toEqual([null, null, null]);
    expect(Object.values(NO_CUSHION_TERMS.brokenPerMille)).toEqual([null, null, null]);
  });

  it("comes back as it was kept: nothing said is not nought", async () => {
    await saveCushionTerms(shop.db, OWN, 2_400);
    expect(await cushionTermsOf(shop.db)).toEqual(OWN);
    await saveCushionTerms(shop.db, NO_CUSHION_TERMS, null);
    expect(await cushionTermsOf(shop.db)).toEqual(NO_CUSHION_TERMS);
  });

  it("is kept with what an hour counts for, and leaves all else about the cartons as it was", async () => {
    const cartons = { ...USUAL_CARTON_SETTINGS, bulgeUm: 6_350, cutMinutes: 3, hourMinor: 1_800 };
    await saveCartonSettings(shop.db, cartons);
    await saveRangeSizes(shop.db, "8 x 8 x 8 in");
    await saveCushionTerms(shop.db, OWN, 2_400);
    expect(await cartonSettingsOf(shop.db)).toEqual({
      settings: { ...cartons, hourMinor: 2_400 },
      rangeSizes: "8 x 8 x 8 in",
    });
    await saveCushionTerms(shop.db, OWN, null);
    expect((await cartonSettingsOf(shop.db)).settings.hourMinor).toBeNull();
    await expect(saveCushionTerms(shop.db, NO_CUSHION_TERMS, -1)).rejects.toThrow(/hourMinor/);
    expect(await cushionTermsOf(shop.db)).toEqual(OWN);
  });

  it.each([
    ["minutes below nought", { ...OWN, minutes: { ...OWN.minutes, paper: -1 } }],
    ["more than ten hours", { ...OWN, minutes: { ...OWN.minutes, paper: 601 } }],
    ["more broken than were sent", { ...OWN, brokenPerMille: { ...OWN.brokenPerMille, bubble: 1_001 } }],
    ["what is no number", { ...OWN, minutes: { ...OWN.minutes, paper: Number.NaN } }],
    ["a field that nobody knows", { ...OWN, colour: 1 }],
  ])("is not kept with %s, and what was kept stays", async (_, wrong) => {
    await saveCushionTerms(shop.db, OWN, 2_400);
    await expect(saveCushionTerms(shop.db, wrong, 2_400)).rejects.toThrow();
    expect(await cushionTermsOf(shop.db)).toEqual(OWN);
  });

  it.each([
    ["a style that is missing", '{"minutes":{"paper":1,"bubble":2},"brokenPerMille":{}}', /mixed/],
    ["half of it", '{"minutes":{"paper":null,"bubble":null,"mixed":null}}', /brokenPerMille/],
    ["no JSON at all", "six minutes", /JSON/],
  ])(
    "is an error where what is kept can't be read, and not left unsaid: %s",
    async (_, cushionTerms, words) => {
      await inTransaction(shop.db, (tx) => tx.shop.updateMany({ data: { cushionTerms } }));
      await expect(cushionTermsOf(shop.db)).rejects.toThrow(words);
    },
  );
});
