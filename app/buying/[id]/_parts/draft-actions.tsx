import type { Day } from "#lib/units/day";
import { formatMoney } from "#lib/units/money";
import type { PurchaseOrder } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import type { Offer, Supplier } from "#prisma/records/suppliers";
import type { Supply } from "#prisma/records/supplies";
import { Message } from "../../../_parts/message";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import styles from "../../_parts/buying.module.css";
import { place, saveDraft, throwDraftAway } from "../../draft-actions";
import { draftFields } from "../../draft-fields";
import { draftNotes } from "../../draft-notes";
import { offersForDraft } from "../../offers-for-draft";

type DraftActionsProps = {
  readonly order: PurchaseOrder;
  readonly offers: readonly Offer[];
  readonly supplies: readonly Supply[];
  readonly supplier: Supplier | null;
  readonly shop: Shop;
  readonly today: Day;
};

/** What can be done with a draft: change it, place it, throw it away. */
export function DraftActions({ order, offers, supplies, supplier, shop, today }: DraftActionsProps) {
  const names = new Map(supplies.map((supply) => [supply.id, supply.name]));
  const isEmpty = order.lines.length === 0;
  const prices = new Map(offers.map((offer) => [offer.id, offer]));
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const change = (
    <RecordForm
      action={saveDraft.bind(null, order.id)}
      label="Change the draft"
      fields={draftFields(order, offersForDraft(order, offers), names, shop)}
      submit="Save the draft"
      tone={isEmpty ? "primary" : "secondary"}
    />
  );
  return (
    <>
      {draftNotes(order, supplier, prices, money).map((note) => (
        <Message key={note} kind="note" title={note} />
      ))}
      {isEmpty ? null : (
        <Section
          title="Place it"
          aside="Send it to the supplier yourself, by its shop, by mail or by phone: the order sheet has the words."
          rule="strong"
        >
          <RecordForm
            action={place.bind(null, order.id)}
            label="Place the order"
            layout="line"
            fields={[
              { name: "placedOn", label: "Ordered on", kind: "day", value: today, required: true },
              { name: "placedAt", label: "at", kind: "number", hint: "15:30; may stay empty" },
              {
                name: "expectedOn",
                label: "Should come on",
                kind: "day",
                hint: "left empty: as the supplier’s terms promise",
              },
            ]}
            submit="Mark as placed"
            tone="primary"
          />
        </Section>
      )}
      <Section title={isEmpty ? "Put something into it" : "Change it"}>
        {isEmpty ? (
          change
        ) : (
          <details className={styles.details}>
            <summary>Other packs, other delivery</summary>
            {change}
          </details>
        )}
        <RecordForm
          action={throwDraftAway.bind(null, order.id)}
          label="Throw the draft away"
          fields={[]}
          submit="Throw the draft away"
          tone="plain"
        />
      </Section>
    </>
  );
}
