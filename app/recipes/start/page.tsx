import type { Metadata } from "next";
import { formatMass, MILLIGRAMS_PER_GRAM, milligrams } from "#lib/units/mass";
import { itemTypesOf } from "#prisma/records/item-types";
import { STARTER_ITEMS } from "#prisma/starter/starter-items";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { shopNow } from "../../_parts/shop-now";
import styles from "../_parts/recipe-card.module.css";
import { copyRecipes } from "../actions";

export const metadata: Metadata = { title: "Starter recipes" };

/** Ready recipes for a new shop: tick what is sold, the supplies come along. */
export default async function StarterPage() {
  const { db, shop } = await shopNow();
  const known = new Set((await itemTypesOf(db)).map((itemType) => itemType.id));
  const offered = STARTER_ITEMS.filter((item) => !known.has(item.id));
  return (
    <Page
      finding={
        offered.length === 0
          ? "Every starter recipe is copied."
          : "Tick what you sell; the recipes and their supplies are copied."
      }
      aside="Common practice, not measured in your shop: weigh a few and change the cards. An estimate does not certify that a package protects its contents; send a test parcel."
    >
      {offered.length === 0 ? null : (
        <RecordForm
          action={copyRecipes}
          label="Starter recipes"
          fields={[]}
          submit="Copy the ticked recipes"
          tone="primary"
        >
          <fieldset className={styles.ticks}>
            <legend>I sell</legend>
            {offered.map((item) => (
              <label key={item.id} className={styles.tick}>
                <input type="checkbox" name="itemTypeId" value={item.id} />
                <span>
                  {item.name}
                  <span className={styles.aside}>
                    about {formatMass(milligrams(item.grams * MILLIGRAMS_PER_GRAM), shop.measures)} bare,{" "}
                    {item.wraps.length} wrapping {item.wraps.length === 1 ? "step" : "steps"}
                  </span>
                </span>
              </label>
            ))}
          </fieldset>
        </RecordForm>
      )}
    </Page>
  );
}
