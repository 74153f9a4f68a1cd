import type { Metadata } from "next";
import { habitsOf } from "#prisma/records/habits";
import { suppliesOf } from "#prisma/records/supplies";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { shopNow } from "../../_parts/shop-now";
import { MeasuredOnce } from "./_parts/measured-once";
import { keepHabits } from "./actions";
import { habitsFields } from "./habits-fields";

export const metadata: Metadata = { title: "How you pack" };

/** How the shop packs: what cards are drafted with. */
export default async function HabitsPage() {
  const { db, shop } = await shopNow();
  return (
    <Page
      finding="How you pack: what a card is drafted with."
      aside="Common practice until you say otherwise. No cushion certifies that a package protects its contents; send a test parcel."
      actions={<ButtonLink href="/recipes">Back to the recipes</ButtonLink>}
    >
      <RecordForm
        action={keepHabits}
        label="How you pack"
        groups={habitsFields(await habitsOf(db), shop.measures)}
        fields={[]}
        submit="Keep how you pack"
        tone="primary"
      />
      <MeasuredOnce supplies={await suppliesOf(db)} />
    </Page>
  );
}
