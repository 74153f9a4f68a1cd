import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import { Section } from "../../_parts/section";
import styles from "./new-shop.module.css";

/** What a shop sees before its first day: what the program will say, what to do first, and the demo shop. */
export function NewShop() {
  return (
    <Page
      width="narrow"
      finding="Nothing is on the shelf yet. Start your shop, or look around in the demo shop."
      aside="Each week this screen will say what to order today, what can wait until which day, and what to count."
      actions={
        <ButtonLink href="/setup" tone="primary">
          Start my shop
        </ButtonLink>
      }
    >
      <Section title="The first ten minutes">
        <ol className={styles.steps}>
          <li>
            Give the shop a name and guess your parcels a week; time zone, currency and units can stay as
            suggested.
          </li>
          <li>Copy the recipes of what you sell. The supplies that they take come along.</li>
          <li>Say who sells them and how many days a delivery takes. No price is needed.</li>
          <li>Count what is on the shelf. Skip what you are not sure of: unknown is not zero.</li>
          <li>Record the parcels you pack, or import those you have sent.</li>
        </ol>
        <p>
          One or two parcels give a first answer, marked as a guess. After three or four weeks the estimates
          rest on your own use.
        </p>
      </Section>
      <Section title="Load the demo shop">
        <p>
          An invented shop with suppliers, recipes and many months of parcels, to try everything on. Stop
          wadding in its terminal and start it with:
        </p>
        <pre className={styles.command}>
          <code>npm start -- --demo</code>
        </pre>
        <p>
          It fills this empty database. To begin your own shop afterwards, stop wadding and move the file{" "}
          <code>data/wadding.db</code> away, or name another one in <code>WADDING_DATABASE</code>.
        </p>
      </Section>
      <p className={styles.safety}>
        wadding estimates quantities and costs. It does not certify that a package protects what is in it:
        send a test parcel first.
      </p>
    </Page>
  );
}
