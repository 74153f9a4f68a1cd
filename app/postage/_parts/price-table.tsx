import type { RateBand } from "#lib/postage/rate-card";
import { measureWords } from "#lib/postage/typed-measure";
import { minorDigitsOf } from "#lib/units/minor-digits";
import { formatMoney } from "#lib/units/money";
import styles from "./postage.module.css";

type PriceTableProps = {
  readonly band: RateBand;
  /** names over the prices */
  readonly zones: readonly string[];
  readonly currency: string;
  readonly caption: string;
};

/** The prices of a band, a row for each weight step. */
export function PriceTable({ band, zones, currency, caption }: PriceTableProps) {
  const { steps, beyond } = band;
  const money = (minor: number | null) =>
    minor === null ? "no price" : formatMoney(minor, currency, minorDigitsOf(currency));
  const rows = [
    ...steps.map(({ upTo, prices }) => ({ label: measureWords(upTo), prices })),
    ...(beyond.kind === "notCarried"
      ? []
      : [{ label: `each further ${measureWords(beyond.each)}`, prices: beyond.prices }]),
  ];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className={styles.wide} tabIndex={0} aria-label={caption}>
      <table className={styles.table}>
        <caption className={styles.caption}>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">Up to</th>
            {zones.map((zone) => (
              <th key={zone} scope="col" className={styles.price}>
                {zone}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ label, prices }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              {zones.map((zone, at) => (
                <td key={zone} className={styles.price}>
                  {money(prices[at] ?? null)}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
