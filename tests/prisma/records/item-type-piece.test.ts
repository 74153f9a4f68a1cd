import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type PieceDescription, pieceOf, saveItemTypePiece } from "#prisma/records/item-type-piece";
import { itemTypesOf, saveItemType } from "#prisma/records/item-types";
import { type ShopFixture, shopFixture } from "./shop-fixture";

const teapot: PieceDescription = {
  body: { kind: "cylinder", acrossUm: 139_700, heightUm: 114_300 },
  hollows: [{ kind: "share", share: 0.8 }],
  stickingOut: [{ part: "spout", where: "left", outUm: 76_200, alongUm: 88_900 }],
  rims: 0,
  lid: { acrossUm: 76_200, heightUm: 50_800 },
  thisSideUp: true,
  frailty: "usual",
  typed: { "body.acrossUm": "5 1/2", "lid.heightUm": "2 in" },
};

let shop: ShopFixture;
beforeEach(async () => {
  shop = await shopFixture();
});
afterEach(() => shop.close());

async function mug() {
  const [itemType] = await itemTypesOf(shop.db);
  if (itemType === undefined) throw new Error("the fixture has no item type");
  return itemType;
}

describe("the description of a piece", () => {
  it("is nothing until it was described", async () => {
    expect(pieceOf(await mug())).toBeNull();
  });

  it("comes back as typed, with the item type's own weight of today", async () => {
    await saveItemTypePiece(shop.db, "mug", teapot);
    await saveItemType(shop.db, { ...(await mug()), massMg: 750_000 });
    expect(pieceOf(await mug())).toEqual({ ...teapot, itemTypeId: "mug", massMg: 750_000 });
  });

  it("stays while the item type is saved without one", async () => {
    await saveItemTypePiece(shop.db, "mug", teapot);
    const { piece: _piece, ...rest } = await mug();
    await saveItemType(shop.db, { ...rest, name: "Teapot" });
    expect(pieceOf(await mug())?.lid).toEqual(teapot.lid);
  });

  it("is not read half: a bad text is an error that names the item type and the place", async () => {
    await saveItemTypePiece(shop.db, "mug", teapot);
    const kept = await mug();
    const bad = (text: string) => () => pieceOf({ ...kept, piece: text });
    expect(bad("{")).toThrow("The description of Mug is no JSON");
    expect(bad((kept.piece ?? "").replace('"spout"', '"wing"'))).toThrow(
      /description of Mug can't be read[\s\S]*stickingOut\[0\]\.part/,
    );
    expect(bad((kept.piece ?? "").replace('"edition":1', '"edition":9'))).toThrow(/edition/);
  });

  it("is refused for an item type that is not there", async () => {
    await expect(saveItemTypePiece(shop.db, "jug", teapot)).rejects.toThrow(/got jug/);
  });
});
