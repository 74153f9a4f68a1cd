import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { Database } from "#prisma/client";
import { closedSpansOf } from "#prisma/records/closed-spans";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { addClosedSpan, dropClosedSpan } from "../calendar-actions";
import styles from "./setup.module.css";

/** Days without packing: averages leave them out, and the coming ones use nothing. */
export async function ClosedDays({ db }: { readonly db: Database }) {
  const spans = await closedSpansOf(db);
  return (
    <Section
      title={spans.length === 0 ? "Never closed so far" : "When the shop is closed"}
      id="closed"
      aside="Weekly use leaves closed days out."
    >
      <ul className={styles.list}>
        {spans.map((span) => (
          <li key={span.id} className={styles.line}>
            <span>
              {formatDay(day(span.fromDay))} to {formatDay(day(span.toDay), { year: true })}: {span.words}
            </span>
            <RecordForm
              action={dropClosedSpan.bind(null, span.id)}
              label={`Take off ${span.words} from ${span.fromDay}`}
              fields={[]}
              submit="Take off"
              tone="plain"
            />
          </li>
        ))}
      </ul>
      <RecordForm
        action={addClosedSpan}
        label="Closed days"
        layout="line"
        fields={[
          { name: "fromDay", label: "First day", kind: "day", required: true },
          { name: "toDay", label: "Last day", kind: "day", required: true },
          { name: "words", label: "Why", kind: "text", required: true },
        ]}
        submit="Add closed days"
      />
    </Section>
  );
}
