import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { inTransaction } from "#prisma/client";
import {
  cartonSettingsOf,
  saveCartonSettings,
  saveRangeSizes,
  setUseFirst,
  USUAL_CARTON_SETTINGS,
} from "#prisma/records/carton-terms";
import { supplyOf } from "#prisma/records/supplies";
import { type ShopFixture, shopFixture } from "./shop-fixture";

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

const OWN = {
  ageing: { slow: { silentWeeks: 4, coverMonths: 3.5 }, sits: { silentWeeks: 13, coverMonths: 12 } },
  bulgeUm: 6_350,
  cutMinutes: 3,
  hourMinor: 2_400,
};

describe("how a shop judges its cartons", () => {
  it("is the usual way until it says otherwise", async () => {
    expect(await cartonSettingsOf(shop.db)).toEqual({ settings: USUAL_CARTON_SETTINGS, rangeSizes: "" });
  });

  it("comes back as it was kept", async () => {
    await saveCartonSettings(shop.db, OWN);
    await saveRangeSizes(shop.db, "12 x 9 x 6 in; 0.85\n\n8 x 8 x 8 in");
    expect(await cartonSettingsOf(shop.db)).toEqual({
      settings: OWN,
      rangeSizes: "12 x 9 x 6 in; 0.85\n\n8 x 8 x 8 in",
    });
  });

  const { slow } = OWN.ageing;
  it.each([
    ["slow after it sits", { ...OWN, ageing: { slow, sits: { silentWeeks: 3, coverMonths: 12 } } }],
    ["no week at all", { ...OWN, ageing: { ...OWN.ageing, slow: { ...slow, silentWeeks: 0 } } }],
    ["a wall that bows out by 6 cm", { ...OWN, bulgeUm: 60_000 }],
    ["cutting that takes no time", { ...OWN, cutMinutes: 0 }],
    ["an hour that costs less than nothing", { ...OWN, hourMinor: -1 }],
    ["a part of a cent", { ...OWN, hourMinor: 0.5 }],
    ["a field that nobody knows", { ...OWN, colour: 1 }],
  ])("is not kept with %s, and what was kept stays", async (_, wrong) => {
    await saveCartonSettings(shop.db, OWN);
    await expect(saveCartonSettings(shop.db, wrong)).rejects.toThrow();
    expect((await cartonSettingsOf(shop.db)).settings).toEqual(OWN);
  });

  it("is an error where what is kept can't be read, and not the usual way", async () => {
    await inTransaction(shop.db, (tx) => tx.shop.updateMany({ data: { cartonTerms: '{"bulgeUm":1}' } }));
    await expect(cartonSettingsOf(shop.db)).rejects.toThrow(/ageing/);
  });
});

describe("the cartons to use first", () => {
  const isFirst = async (id: string) => (await supplyOf(shop.db, id))?.useFirst;

  it("are marked and unmarked, one by one", async () => {
    expect(await setUseFirst(shop.db, "carton-8", true)).toBe(true);
    expect(await isFirst("carton-8")).toBe(true);
    expect(await setUseFirst(shop.db, "carton-8", false)).toBe(true);
    expect(await isFirst("carton-8")).toBe(false);
  });

  it("are cartons of the shop: nothing else is marked", async () => {
    expect(await setUseFirst(shop.db, "paper", true)).toBe(false);
    expect(await isFirst("paper")).toBe(false);
    expect(await setUseFirst(shop.db, "carton-9", true)).toBe(false);
  });
});
