import type { Metadata } from "next";
import { FormPage } from "../../_parts/form-page";
import { shopNow } from "../../_parts/shop-now";
import { keepSupply } from "../actions";
import { supplyFields } from "../supply-fields";

export const metadata: Metadata = { title: "Add a supply" };

/** A new supply. Only its name, what it is and how it is used are needed; the rest can wait. */
export default async function NewSupplyPage() {
  const { shop } = await shopNow();
  return (
    <FormPage
      finding="Add a supply: its name and how it is used are enough."
      aside="Weights and sizes let it be counted with a scale or a ruler, and let a parcel be weighed before it is packed. A printed rating is the maker’s; it does not certify that a package protects its contents."
      action={keepSupply.bind(null, null)}
      label="New supply"
      fields={supplyFields(null, shop.measures)}
      submit="Add the supply"
    />
  );
}
