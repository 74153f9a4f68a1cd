import { z } from "zod";
import type { InvoiceRate } from "#lib/purchasing/invoice-rate";
import { isFarOff } from "#lib/purchasing/price-move";
import { AMOUNT_PER_UNIT, type Amount } from "#lib/units/amount";
import type { Day } from "#lib/units/day";
import type { UseUnit } from "#lib/units/use-unit";
import type { OrderLine } from "#prisma/records/purchase-orders";
import type { Shop } from "#prisma/records/shop";
import { amountAboveZero, dayText, moneyTyped, tick, wholeNumber } from "../_parts/typed-fields";
import { unitCostWords } from "../supplies/unit-cost-words";

/** What came of one order line. */
export type CameLine = {
  readonly purchaseLineId: string;
  readonly supplyId: string;
  readonly packs: number;
  readonly packAmount: Amount;
  readonly packTyped: string;
  readonly priceMinor: number | null;
  readonly moreThanOrdered: boolean;
  /** what still comes; null where nothing does */
  readonly rest: { readonly packs: number; readonly expectedOn: Day } | null;
};

/** What the fields of a line are read against. */
type LineQuestion = {
  readonly line: OrderLine;
  readonly unit: UseUnit;
  readonly shop: Shop;
  /** digits after the point of the invoice's currency */
  readonly digits: number;
  /** between smallest units; null while it can't be read: then the price is not held against others */
  readonly rate: InvoiceRate | null;
  /** last price paid, 1/10,000 minor unit per use unit; null where nothing was */
  readonly lastPaid: number | null;
};

/** What came of a line, that nothing of it came, or what to mend by field. */
export type CameReading =
  | { readonly kind: "came"; readonly line: CameLine }
  | { readonly kind: "nothing" }
  | { readonly kind: "problems"; readonly problems: Readonly<Record<string, string>> };

/** Words on the ticks that let something unusual pass. */
export const MORE_CAME = "More came than was ordered";
export const PRICE_IS_RIGHT = "The price is right all the same";

const MOST_PACKS = 10_000;
const VALUE_PER_MINOR = 10_000;
const PARTS = ["came", "amount", "price", "rest", "restOn", "more", "sure"] as const;

/**
 * Reads what came of one order line: fields named `came:<line>`, `amount:<line>`, `price:<line>` and so on.
 *
 * @param typed all fields by name, as sent
 * @param question the line and what is known of it
 * @returns what came, or what to mend
 */
export function readCameLine(typed: Readonly<Record<string, string>>, question: LineQuestion): CameReading {
  const { line, unit, shop } = question;
  const { open } = line;
  if (open === null) return { kind: "nothing" };
  const name = (part: (typeof PARTS)[number]) => `${part}:${open.lineId}`;
  const own = Object.fromEntries(PARTS.flatMap((part) => entryOf(part, typed[name(part)])));
  const packs = wholeNumber(0, MOST_PACKS).safeParse(own["came"] ?? "0");
  if (packs.success && packs.data === 0) return { kind: "nothing" };
  const read = lineForm(unit, shop, question.digits).safeParse(own);
  if (!read.success) {
    const problems = read.error.issues.map((issue) => [
      `${String(issue.path[0])}:${open.lineId}`,
      issue.message,
    ]);
    return { kind: "problems", problems: Object.fromEntries(problems.toReversed()) };
  }
  const { came, amount, price, rest, restOn, more, sure } = read.data;
  const missing = open.packs - came;
  const problems: [string, string][] = [];
  if (missing > 0 && rest === "comes" && restOn === undefined) {
    problems.push([name("restOn"), "Say when the rest is expected, or that it does not come."]);
  }
  if (missing < 0 && !more && came * amount.amount > open.packs * line.packAmount) {
    const words = `Only ${open.packs} of ${line.supply} were on order.`;
    problems.push([name("came"), `${words} Correct it, or tick “${MORE_CAME}”.`]);
    problems.push([name("more"), "Tick this if it is so."]);
  }
  const far = sure ? null : farOffWords(price, amount.amount, question);
  if (far !== null) {
    problems.push([name("price"), `${far} Correct the price or the pack, or tick “${PRICE_IS_RIGHT}”.`]);
    problems.push([name("sure"), "Tick this if the receipt says so."]);
  }
  if (problems.length > 0) return { kind: "problems", problems: Object.fromEntries(problems) };
  return {
    kind: "came",
    line: {
      purchaseLineId: open.lineId,
      supplyId: line.supplyId,
      packs: came,
      packAmount: amount.amount,
      packTyped: `${amount.typedValue} ${amount.typedUnit}`.trim(),
      priceMinor: price ?? null,
      moreThanOrdered: more,
      rest:
        missing > 0 && rest === "comes" && restOn !== undefined
          ? { packs: missing, expectedOn: restOn }
          : null,
    },
  };
}

function entryOf(part: string, value: string | undefined): [string, string][] {
  return value === undefined ? [] : [[part, value]];
}

function lineForm(unit: UseUnit, shop: Shop, digits: number) {
  return z.object({
    came: wholeNumber(0, MOST_PACKS),
    amount: z
      .string("Write what is in each pack: without it neither stock nor price can be told.")
      .pipe(amountAboveZero(unit, shop.measures)),
    price: moneyTyped(digits).optional(),
    rest: z.enum(["comes", "never"]).default("comes"),
    restOn: dayText.optional(),
    more: tick,
    sure: tick,
  });
}

/** Words where a price is far from the last one paid, else from the price that it was ordered at. */
function farOffWords(price: number | undefined, packAmount: number, question: LineQuestion): string | null {
  const { line, rate, lastPaid, shop, unit } = question;
  if (price === undefined || rate === null) return null;
  const inShop = (price * Number(rate.numerator)) / Number(rate.denominator);
  const perUnit = perUnitOf(inShop, packAmount);
  const ordered = line.priceMinor === null ? null : perUnitOf(line.priceMinor, line.packAmount);
  const known = lastPaid ?? ordered;
  if (known === null || !isFarOff(perUnit, known)) return null;
  const since = lastPaid === null ? "it was ordered at" : "the last price paid was";
  return `This is ${unitCostWords(perUnit, unit, shop)}; ${since} ${unitCostWords(known, unit, shop)}.`;
}

function perUnitOf(priceMinor: number, packAmount: number): number {
  return (priceMinor * VALUE_PER_MINOR * AMOUNT_PER_UNIT) / packAmount;
}
