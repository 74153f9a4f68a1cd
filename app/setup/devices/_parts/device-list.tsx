import { formatDay } from "#lib/units/day-text";
import { type Instant, shopDay } from "#lib/units/instant";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import type { Device } from "../../../server/house/pairing.mjs";
import { sendDeviceAway } from "../actions";
import styles from "./devices.module.css";

type DeviceListProps = {
  readonly devices: readonly Device[];
  readonly timeZone: string;
  /** Only on the computer itself. */
  readonly canChange: boolean;
};

/** The paired devices, each with the way to send it away. */
export function DeviceList({ devices, timeZone, canChange }: DeviceListProps) {
  if (devices.length === 0) return null;
  return (
    <Section title="Let in">
      <ul className={styles.devices}>
        {devices.map(({ id, name, pairedAt, lastSeenAt }) => (
          <li key={id} className={styles.device}>
            <span>
              <strong>{name}</strong>
              <span className={styles.seen}>
                paired {formatDay(shopDay(pairedAt as Instant, timeZone))}, last seen{" "}
                {formatDay(shopDay(lastSeenAt as Instant, timeZone))}
              </span>
            </span>
            {canChange ? (
              <RecordForm
                action={sendDeviceAway.bind(null, id)}
                label={`Send ${name} away`}
                fields={[]}
                submit="Send away"
                tone="plain"
              />
            ) : null}
          </li>
        ))}
      </ul>
    </Section>
  );
}
