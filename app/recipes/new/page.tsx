import type { Metadata } from "next";
import { FormPage } from "../../_parts/form-page";
import { shopNow } from "../../_parts/shop-now";
import { keepItemType } from "../actions";
import { itemTypeFields } from "../item-type-fields";

export const metadata: Metadata = { title: "Add an item type" };

type NewItemTypePageProps = {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** A new item type; its recipe is written next. What stands in the address is filled in. */
export default async function NewItemTypePage({ searchParams }: NewItemTypePageProps) {
  const { shop } = await shopNow();
  const query = await searchParams;
  const fields = itemTypeFields(null, shop).map((field) => {
    const typed = query[field.name];
    return typeof typed === "string" ? { ...field, value: typed } : field;
  });
  return (
    <FormPage
      finding="Add an item type; its name is enough."
      aside="Goods with batteries, liquids or other dangerous contents follow the carrier’s and the country’s rules."
      action={keepItemType.bind(null, null)}
      label="New item type"
      fields={fields}
      submit="Add the item type"
    />
  );
}
