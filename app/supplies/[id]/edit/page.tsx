import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { supplyOf } from "#prisma/records/supplies";
import { FormPage } from "../../../_parts/form-page";
import { shopNow } from "../../../_parts/shop-now";
import { keepSupply } from "../../actions";
import { supplyFields } from "../../supply-fields";

export const metadata: Metadata = { title: "Change a supply" };

/** A supply's name, sizes and weights. */
export default async function EditSupplyPage({
  params,
}: {
  readonly params: Promise<{ readonly id: string }>;
}) {
  const { db, shop } = await shopNow();
  const supply = await supplyOf(db, (await params).id);
  if (supply === null) notFound();
  const guess = supply.guessed
    ? "These figures are common practice, not yours yet: weigh and measure once. "
    : "";
  return (
    <FormPage
      finding={`${supply.name}: what it measures and weighs.`}
      aside={`${guess}Parcels already packed keep the amounts and costs they were recorded with.`}
      action={keepSupply.bind(null, supply.id)}
      label={`Change ${supply.name}`}
      fields={supplyFields(supply, shop.measures)}
      submit="Save"
    />
  );
}
