import type { Metadata } from "next";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { shopNow } from "../../_parts/shop-now";
import { keepItemType } from "../actions";
import { itemTypeFields } from "../item-type-fields";

export const metadata: Metadata = { title: "Add an item type" };

/** A new item type; its recipe is written next. */
export default async function NewItemTypePage() {
  const { shop } = await shopNow();
  return (
    <Page
      width="narrow"
      finding="Add an item type; its name is enough."
      aside="Goods with batteries, liquids or other dangerous contents follow the carrier’s and the country’s rules."
    >
      <RecordForm
        action={keepItemType.bind(null, null)}
        label="New item type"
        fields={itemTypeFields(null, shop.measures)}
        submit="Add the item type"
        tone="primary"
      />
    </Page>
  );
}
