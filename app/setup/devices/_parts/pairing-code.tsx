import { clockText } from "../../../pack/clock-text";
import type { Pairing } from "../../../server/house/pairing.mjs";
import styles from "./devices.module.css";
import { ScannedSquare } from "./scanned-square";

type PairingCodeProps = {
  readonly pairing: Pairing;
  /** Under which the house reaches the program: "192.168.1.5:3000". */
  readonly hosts: readonly string[];
  /** Milliseconds since 1970. */
  readonly now: number;
  readonly timeZone: string;
};

/** The code of the moment: to be scanned, or typed by hand under the address. */
export function PairingCode({ pairing, hosts, now, timeZone }: PairingCodeProps) {
  const { code, until } = pairing;
  return (
    <section aria-label="The code" className={styles.pairing}>
      <ul className={styles.ways}>
        {hosts.map((host) => (
          <li key={host}>
            <ScannedSquare
              address={`http://${host}/pair?code=${code}`}
              label={`The address http://${host}/pair with the code, to be scanned`}
            />
            <p className={styles.address}>http://{host}</p>
          </li>
        ))}
      </ul>
      <p>
        Scan the square with the phone's camera, or open the address on it and type{" "}
        <strong className={styles.code}>
          {code.slice(0, 4)} {code.slice(4)}
        </strong>
        . It lets one device in, until {clockText(Date.parse(until), now, timeZone)}.
      </p>
    </section>
  );
}
