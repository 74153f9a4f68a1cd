import { Message } from "../../_parts/message";
import type { AskedDay } from "../../this-week/asked-day";

/** Says that the day in the address can't be read. */
export function DayProblem({ asked, today }: { readonly asked: AskedDay; readonly today: string }) {
  if (asked.kind !== "unreadable") return null;
  return (
    <Message kind="error" title={`The day “${asked.text}” in the address can't be read.`}>
      Write it like ?today={today}. Today's outlook is shown instead.
    </Message>
  );
}
