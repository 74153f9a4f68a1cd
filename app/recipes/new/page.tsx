import type { Metadata } from "next";
import { FormPage } from "../../_parts/form-page";
import { shopNow } from "../../_parts/shop-now";
import { keepItemType } from "../actions";
import { itemTypeFields } from "../item-type-fields";

export const metadata: Metadata = { title: "Add an item type" };

/** A new item type; its recipe is written next. */
export default async function NewItemTypePage() {
  const { shop } = await shopNow();
  return (
    <FormPage
      finding="Add an item type; its name is enough."
      aside="Goods with batteries, liquids or other dangerous contents follow the carrier’s and the country’s rules."
      action={keepItemType.bind(null, null)}
      label="New item type"
      fields={itemTypeFields(null, shop.measures)}
      submit="Add the item type"
    />
  );
}
