"use client";

import { useActionState, useState } from "react";
import { linePackPrice } from "#lib/purchasing/line-sum";
import { formatDay } from "#lib/units/day-text";
import { formatMoney } from "#lib/units/money";
import { Button } from "../../_parts/button";
import { BLANK } from "../../_parts/form-state";
import { Message } from "../../_parts/message";
import { Stepper } from "../../_parts/stepper";
import { markAsOrdered } from "../actions";
import { type DraftLine, draftTotal, type PurchaseDraft } from "../purchase-draft";
import styles from "./purchase-draft-form.module.css";

type PurchaseDraftFormProps = {
  readonly draft: PurchaseDraft;
  /** The key of the order, so that sending it twice records it once. */
  readonly purchaseId: string;
  readonly placedOn: string;
  /** The day that the address asked for, if it did. */
  readonly today: string | null;
  readonly money: { readonly currency: string; readonly minorDigits: number };
};

/** One supplier's order: packs to change, what it comes to, and the button that says it was placed. */
export function PurchaseDraftForm({ draft, purchaseId, placedOn, today, money }: PurchaseDraftFormProps) {
  const [state, send, isBusy] = useActionState(markAsOrdered, BLANK);
  const [packs, setPacks] = useState<Readonly<Record<string, string>>>({});
  const countOf = (line: DraftLine) => Number(packs[line.offerId] ?? line.packs) || 0;
  const total = draftTotal(
    draft,
    Object.fromEntries(draft.lines.map((line) => [line.offerId, countOf(line)])),
  );
  const inMoney = (minor: number) => formatMoney(minor, money.currency, money.minorDigits);
  const problems = state.kind === "refused" ? Object.values(state.problems) : [];
  return (
    <form action={send} className={styles.draft} aria-label={`Order to ${draft.supplierName}`}>
      <input type="hidden" name="purchaseId" value={purchaseId} />
      <input type="hidden" name="supplierId" value={draft.supplierId} />
      <input type="hidden" name="placedOn" value={placedOn} />
      {today === null ? null : <input type="hidden" name="today" value={today} />}
      <div className={styles.head}>
        <h3 className={styles.supplier}>{draft.supplierName}</h3>
        <output className={styles.total}>{totalWords(total, inMoney)}</output>
      </div>
      <p className={styles.aside}>
        Placed today, the last of it is here {formatDay(draft.expectedOn, { weekday: true })}.{" "}
        {deliveryWords(draft, total, inMoney)}
      </p>
      <ul className={styles.lines}>
        {draft.lines.map((line) => (
          <li key={line.offerId} className={styles.line}>
            <input type="hidden" name={`expected:${line.offerId}`} value={line.expectedOn} />
            <div>
              <span className={styles.supply}>
                {line.supply}, {line.pack}
              </span>
              <span className={styles.aside}>{lineWords(line, countOf(line), inMoney)}</span>
            </div>
            <Stepper
              label={`packs of ${line.supply}`}
              name={`packs:${line.offerId}`}
              text={packs[line.offerId] ?? String(line.packs)}
              isLessDisabled={countOf(line) <= 0}
              onLess={() => setPacks({ ...packs, [line.offerId]: String(countOf(line) - 1) })}
              onMore={() => setPacks({ ...packs, [line.offerId]: String(countOf(line) + 1) })}
              onText={(typed) => setPacks({ ...packs, [line.offerId]: typed.trim() })}
            />
          </li>
        ))}
      </ul>
      {problems.map((problem) => (
        <Message key={problem} kind="error" title={problem} />
      ))}
      <div className={styles.ways}>
        <Button type="submit" tone="primary" isDisabled={isBusy}>
          {isBusy ? "Marking…" : "Mark as ordered"}
        </Button>
        <Button type="submit" tone="plain" name="as" value="draft" isDisabled={isBusy}>
          Keep as a draft
        </Button>
      </div>
    </form>
  );
}

type InMoney = (minor: number) => string;

function totalWords(total: ReturnType<typeof draftTotal>, inMoney: InMoney): string {
  if (total.lines === 0) return "nothing chosen";
  if (total.withoutPrice === total.lines) return "prices unknown";
  const sum = inMoney(total.goodsMinor + total.deliveryMinor);
  return total.withoutPrice === 0 ? sum : `${sum} and ${total.withoutPrice} without a price`;
}

function deliveryWords(draft: PurchaseDraft, total: ReturnType<typeof draftTotal>, inMoney: InMoney): string {
  if (draft.deliveryMinor === 0) return "";
  const charge =
    total.deliveryMinor === 0 ? "Delivery is free" : `With ${inMoney(draft.deliveryMinor)} delivery`;
  if (draft.freeDeliveryMinor === null) return `${charge}.`;
  return total.deliveryMinor === 0
    ? `${charge} from ${inMoney(draft.freeDeliveryMinor)} on.`
    : `${charge}; free from ${inMoney(draft.freeDeliveryMinor)} on.`;
}

function lineWords(line: DraftLine, packs: number, inMoney: InMoney): string {
  const price = linePackPrice(line.prices, Math.max(1, packs));
  const cost = price === null ? "no price known" : `${inMoney(price)} a pack`;
  if (line.why !== null) return `${cost}; ${line.why}`;
  if (line.isUrgent) return `${cost}; ${line.suggestedPacks} suggested`;
  const by = line.orderByDate === null ? "later" : `by ${formatDay(line.orderByDate)}`;
  return `${cost}; may wait: ${line.suggestedPacks} suggested ${by}`;
}
