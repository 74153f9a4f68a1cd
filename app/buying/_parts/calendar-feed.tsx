import { headers } from "next/headers";
import { ButtonLink } from "../../_parts/button-link";
import styles from "./buying.module.css";

const ADDRESS = "/api/order-by.ics";

/** The days of buying for a calendar: where they are, and who can read them. */
export async function CalendarFeed() {
  const host = (await headers()).get("host") ?? "localhost";
  return (
    <>
      <p className={styles.reading}>
        Order-by days and expected deliveries as all-day events. A calendar program on this computer can
        subscribe to <code className={styles.address}>{`http://${host}${ADDRESS}`}</code> and asks again by
        itself.
      </p>
      <p className={styles.reading}>
        A phone would have to reach this computer, and wadding answers to this computer only. For a phone,
        download the file and open it there: it holds the days as they stand now, and opening a newer one
        replaces them.
      </p>
      <p>
        <ButtonLink href={ADDRESS}>Download the calendar</ButtonLink>
      </p>
    </>
  );
}
