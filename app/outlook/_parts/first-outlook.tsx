import Link from "next/link";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import styles from "./rests-on.module.css";

/** What to do first, where there is neither a parcel nor a guess to forecast from. */
export function FirstOutlook() {
  return (
    <Page
      width="narrow"
      finding="There is nothing to forecast from yet: a first parcel or a guess begins it."
      aside="Outlook says what you will use in the coming weeks, how sure that is, and how it was worked out."
    >
      <Section title="Two ways to begin">
        <ul className={styles.list}>
          <li>
            <Link href="/setup#shop">Say how many parcels you guess to send a week</Link>. The forecast starts
            from it, says so, and leans on it less with every week of records.
          </li>
          <li>
            <Link href="/pack">Record parcels as you pack them</Link>, or{" "}
            <Link href="/setup/import">import those of the past</Link>. From the first day on there is a
            number; from the ninth full week on it is chosen by looking back at what would have come closest.
          </li>
        </ul>
        <p className={styles.action}>
          Both need <Link href="/recipes/start">recipes of what you sell</Link>: they turn parcels into
          tissue, bubble, paper and cartons.
        </p>
      </Section>
    </Page>
  );
}
