import Link from "next/link";
import { Section } from "../../../_parts/section";
import styles from "./first-event.module.css";

/** What an event is and what it does, for a shop that has planned none. */
export function FirstEvent() {
  return (
    <Section title="When you know of better or worse days, say so here">
      <ul className={styles.reasons}>
        <li>
          An event is a run of days on which you sell more or less than usual, and you know why: a market, a
          fair, mugs on offer. Write when it is and how much more goes out.
        </li>
        <li>
          How much more is your guess, and the Outlook screen says it as one. No record can know it before you
          do.
        </li>
        <li>
          An event that is over is taken out of the history, so that its parcels do not count as usual trade.
          It pays to write down last year’s market too.
        </li>
      </ul>
      <p>
        Days on which nothing is packed at all are closed days: those stand{" "}
        <Link href="/setup#closed">under Setup</Link>.
      </p>
    </Section>
  );
}
