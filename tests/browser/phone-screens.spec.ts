import { expectSoundOnPhone } from "./expect-sound-on-phone";
import { screenTest } from "./screen-test";

for (const path of [
  "/outlook",
  "/outlook/parcels",
  "/outlook/supplies/packing-paper",
  "/outlook/supplies/packing-paper?parcels=20",
  "/outlook/item-types/mug",
  "/recipes",
  "/recipes/mug-pair",
  "/recipes/mug-pair/edit?style=paper",
  "/recipes/mug-pair/draft",
  "/recipes/mug-pair/changes",
  "/recipes/habits",
  "/recipes/start",
  "/recipes/new",
  "/pack/listing?type=mug-pair",
  "/pack/listing?type=new&form=round&sizes=4+x+5+in&bare=13+oz",
  "/pack/several",
  "/parcels/broken",
  "/postage",
  "/postage/try",
  "/postage/try?weight=4+lb&carton=carton-14x14x10&zone=far",
  "/postage/paid",
  "/recipes/mug/card?style=paper",
  "/buying",
  "/buying/demo-order-draft",
  "/buying/demo-order-part",
  "/buying/demo-order-part/receive",
  "/buying/demo-order-draft/sheet",
  "/setup",
  "/supplies",
  "/supplies/count",
  "/supplies/tissue",
  "/supplies/new",
  "/cartons",
  "/cartons/fit",
  "/cartons/range",
  "/cartons/carton-14x14x10",
  "/paper-or-bubble",
  "/paper-or-bubble/framed-tile",
]) {
  screenTest(`${path} has no accessibility fault that axe finds and fits a phone`, async ({ page }) => {
    await expectSoundOnPhone(page, path);
  });
}
