import Link from "next/link";
import type { Database } from "#prisma/client";
import { purchasesOf } from "#prisma/records/purchase-orders";
import { Message } from "../../_parts/message";
import { linesWords, orderHref } from "../../buying/order-words";

/** Names the drafts, so that what is written already is not ordered a second time. */
export async function DraftsWaiting({ db }: { readonly db: Database }) {
  const drafts = (await purchasesOf(db, { others: 0 })).filter((order) => order.status === "draft");
  if (drafts.length === 0) return null;
  return (
    <Message
      kind="note"
      title={
        drafts.length === 1
          ? "One order is written and not placed."
          : `${drafts.length} orders are written and not placed.`
      }
    >
      {drafts.map((draft) => (
        <p key={draft.id}>
          <Link href={orderHref(draft.id)}>
            {draft.supplierName}: {linesWords(draft.lines)}
          </Link>
        </p>
      ))}
      <p>
        The check does not count with drafts: place them or throw them away before you order the same again.
      </p>
    </Message>
  );
}
