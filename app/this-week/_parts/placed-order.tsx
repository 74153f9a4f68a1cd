import { type Day, day, maxDay } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { OpenPurchaseLine } from "#prisma/records/purchases";
import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import { takeOrderBack } from "../actions";

type PlacedOrderProps = {
  /** The lines of the order that are still open. */
  readonly lines: readonly OpenPurchaseLine[];
  /** The day that the address asked for, if it did. */
  readonly asked: Day | null;
};

/** Says that an order was marked as placed, with the way back. */
export function PlacedOrder({ lines, asked }: PlacedOrderProps) {
  const [first] = lines;
  if (first === undefined) return null;
  const last = lines.map((line) => day(line.expectedOn)).reduce(maxDay);
  const count = lines.length === 1 ? "one line" : `${lines.length} lines`;
  return (
    <Message kind="done" title={`The order to ${first.supplierName} is marked as placed: ${count}.`}>
      <p>
        The last of it is expected {formatDay(last, { weekday: true })}. Receive it under Supplies when it
        comes.
      </p>
      <form action={takeOrderBack.bind(null, first.purchaseId, asked)}>
        <Button type="submit">Take the order back</Button>
      </form>
    </Message>
  );
}
