import { z } from "zod";
import { invoiceRate } from "#lib/purchasing/invoice-rate";
import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { OrderLine, PurchaseOrder } from "#prisma/records/purchase-orders";
import type { ReceiptBody } from "#prisma/records/receipts";
import type { Shop } from "#prisma/records/shop";
import type { Supply } from "#prisma/records/supplies";
import { dayProblem } from "../_parts/day-problem";
import { problemsOf } from "../_parts/form-state";
import { dayText, neededText, optionalText } from "../_parts/typed-fields";
import { readFreeExtras } from "./free-extras-form";
import { invoiceShape, rateMillionths, rateProblem, typedDigits } from "./invoice-form";
import { type CameLine, readCameLine } from "./receive-line-form";

/** What the form is read against. */
export type ReceiveOrderQuestion = {
  readonly order: PurchaseOrder;
  readonly supplies: readonly Supply[];
  readonly shop: Shop;
  readonly today: Day;
  /** the last price paid by supply, 1/10,000 minor unit per use unit */
  readonly lastPaid: ReadonlyMap<string, number>;
};

/** The receipts that a form stands for, or what to mend by field. */
export type ReceiveOrderReading =
  | { readonly kind: "receipts"; readonly receipts: readonly ReceiptBody[] }
  | { readonly kind: "problems"; readonly problems: Readonly<Record<string, string>> };

type Typed = Readonly<Record<string, string>>;

/**
 * Reads what came of an order: one paid receipt, and a free one for what came along unordered.
 *
 * @param typed the fields by name, as sent
 * @param question the order, the supplies, the day, the prices paid
 * @returns receipts that can be booked together, or what to mend
 */
export function readReceiveOrder(typed: Typed, question: ReceiveOrderQuestion): ReceiveOrderReading {
  const { order, shop, today } = question;
  const digits = typedDigits(typed["currency"], shop);
  const head = headForm(shop, digits).safeParse(typed);
  const open = order.lines.filter((line) => line.open !== null);
  const rate = head.success
    ? invoiceRate({ currency: head.data.currency, rateMillionths: rateMillionths(head.data) }, shop)
    : null;
  const readings = open.map((line) =>
    readCameLine(typed, { line, shop, digits, rate, ...knownOf(line, question) }),
  );
  const extras = readFreeExtras(typed, question.supplies, shop.measures);
  const problems: Record<string, string> = Object.assign(
    head.success ? {} : problemsOf(head.error),
    ...readings.map((reading) => (reading.kind === "problems" ? reading.problems : {})),
    extras.kind === "problems" ? extras.problems : {},
  );
  if (!head.success) return { kind: "problems", problems };
  const when = receivedProblem(head.data.receivedOn, order, today);
  if (when !== null) problems["receivedOn"] = when;
  const came = readings.flatMap((reading) => (reading.kind === "came" ? [reading.line] : []));
  const early = came.find((line) => line.rest !== null && line.rest.expectedOn < head.data.receivedOn);
  if (early !== undefined) {
    problems[`restOn:${early.purchaseLineId}`] =
      "The rest can’t have been expected before this part came. Choose a later day.";
  }
  const extrasMinor = (head.data.delivery ?? 0) + (head.data.taxOnTop ? (head.data.tax ?? 0) : 0);
  if (came.length > 0 && extrasMinor > 0 && came.every((line) => line.priceMinor === null)) {
    problems["delivery"] =
      "No line has a price, so delivery and tax can’t be shared over them. Write a price, or leave these empty.";
  }
  const free = extras.kind === "extras" ? extras.lines : [];
  if (Object.keys(problems).length === 0 && came.length + free.length === 0) {
    problems[""] = "Nothing came by this form: every line says 0 packs. Write what came, then book it.";
  }
  if (Object.keys(problems).length > 0) return { kind: "problems", problems };
  return { kind: "receipts", receipts: receiptsOf(head.data, order, came, free) };
}

function headForm(shop: Shop, digits: number) {
  return z
    .object({
      id: neededText("The form lost its key. Load the page again."),
      receivedOn: dayText,
      ...invoiceShape(digits),
      note: optionalText,
    })
    .superRefine((invoice, context) => {
      const problem = rateProblem(invoice, shop.currency);
      if (problem !== null) context.addIssue({ code: "custom", path: ["rate"], message: problem });
    });
}

function knownOf(line: OrderLine, { supplies, lastPaid }: ReceiveOrderQuestion) {
  const supply = supplies.find((each) => each.id === line.supplyId);
  return { unit: supply?.useUnit ?? line.unit, lastPaid: lastPaid.get(line.supplyId) ?? null };
}

function receivedProblem(on: Day, order: PurchaseOrder, today: Day): string | null {
  if (on < order.placedOn) {
    const placed = formatDay(order.placedOn, { year: true });
    return `It was ordered on ${placed}: it can’t have come before. Choose a later day.`;
  }
  return dayProblem(on, today);
}

type Head = z.output<ReturnType<typeof headForm>>;
type FreeLines = Extract<ReturnType<typeof readFreeExtras>, { kind: "extras" }>["lines"];

function receiptsOf(
  head: Head,
  order: PurchaseOrder,
  came: readonly CameLine[],
  free: FreeLines,
): ReceiptBody[] {
  const same = {
    supplierId: order.supplierId,
    receivedOn: head.receivedOn,
    currency: head.currency,
    rateMillionths: rateMillionths(head),
    taxIncluded: !head.taxOnTop,
    note: head.note,
  };
  const paid: ReceiptBody = {
    ...same,
    id: head.id,
    kind: "paid",
    deliveryMinor: head.delivery ?? 0,
    taxMinor: head.tax ?? 0,
    shareRule: head.shareRule,
    lines: came.map(({ rest: _rest, ...line }, index) => ({ ...line, id: `${head.id}-${index + 1}` })),
    restStillComes: came.flatMap((line) =>
      line.rest === null ? [] : [{ purchaseLineId: line.purchaseLineId, ...line.rest }],
    ),
  };
  const alsoFree: ReceiptBody = {
    ...same,
    id: `${head.id}-free`,
    kind: "free",
    deliveryMinor: 0,
    taxMinor: 0,
    lines: free.map((line, index) => ({
      ...line,
      purchaseLineId: null,
      priceMinor: null,
      id: `${head.id}-free-${index + 1}`,
    })),
  };
  return [...(came.length > 0 ? [paid] : []), ...(free.length > 0 ? [alsoFree] : [])];
}
