import { amount } from "#lib/units/amount";
import { amountAsTyped, formatAmount } from "#lib/units/amount-text";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { UseUnit } from "#lib/units/use-unit";
import type { Cause } from "#prisma/records/ledger";
import type { LedgerLine } from "#prisma/records/movements";

const CAUSE_WORDS: Readonly<Record<Cause, string>> = {
  received: "came in",
  saved: "came in, free or saved",
  packed: "packed",
  spoilt: "spoilt",
  returned: "came back",
  opening: "first count",
  "count-difference": "count found",
  "cost-difference": "cost put right",
};

const REVERSIBLE: readonly Cause[] = ["spoilt", "saved", "received", "returned"];

/** One line of the ledger, ready to show. */
export type LedgerRow = {
  readonly id: number;
  readonly when: string;
  readonly cause: string;
  readonly amount: string;
  readonly typed: string | null;
  readonly words: string | null;
  readonly parcelId: string | null;
  readonly recordedBy: string;
  readonly isReversal: boolean;
  readonly isReversed: boolean;
  readonly canBeTakenBack: boolean;
};

/**
 * The ledger of a supply in words.
 *
 * @param lines newest first
 * @param unit the supply's use unit
 * @returns one row each
 */
export function ledgerRows(lines: readonly LedgerLine[], unit: UseUnit): LedgerRow[] {
  return lines.map((line) => ({
    id: line.id,
    when: formatDay(day(line.effectiveDay), { weekday: true }),
    cause: `${CAUSE_WORDS[line.cause]}${line.reversesId === null ? "" : ", taken back"}`,
    amount: `${line.amount > 0 ? "+" : ""}${formatAmount(line.amount, unit)}`,
    typed: typedWords(line, unit),
    words: line.words,
    parcelId: line.parcelId,
    recordedBy: line.recordedBy,
    isReversal: line.reversesId !== null,
    isReversed: line.reversed,
    canBeTakenBack:
      REVERSIBLE.includes(line.cause) && line.reversesId === null && !line.reversed && line.parcelId === null,
  }));
}

/** What was typed, where it says more than the amount itself. */
function typedWords(line: LedgerLine, unit: UseUnit): string | null {
  if (line.typedValue === null) return null;
  const typed = `${line.typedValue} ${line.typedUnit ?? ""}`.trim();
  return typed === amountAsTyped(amount(Math.abs(line.amount)), unit) ? null : typed;
}
