import Link from "next/link";
import { day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import { formatMass, milligrams } from "#lib/units/mass";
import { formatMoney } from "#lib/units/money";
import type { Shop } from "#prisma/records/shop";
import { Section } from "../../../_parts/section";
import { contentsText } from "../../../parcels/parcel-text";
import styles from "../../_parts/postage.module.css";
import type { MissedStep } from "../paid-check";

type MissedStepsProps = {
  readonly missed: readonly MissedStep[];
  readonly missedMinor: number;
  readonly mostMg: number;
  readonly shop: Pick<Shop, "currency" | "minorDigits" | "measures">;
};

/** Parcels that were over a step by a little, and what that cost. */
export function MissedSteps({ missed, missedMinor, mostMg, shop }: MissedStepsProps) {
  const money = (minor: number) => formatMoney(minor, shop.currency, shop.minorDigits);
  const mass = (mg: number) => formatMass(milligrams(Math.max(1, Math.round(mg))), shop.measures);
  const little = mass(mostMg);
  const parcels = missed.length === 1 ? "1 parcel was" : `${missed.length} parcels were`;
  return (
    <Section
      title={
        missed.length === 0
          ? `No parcel was ${little} or less over a step`
          : `${parcels} ${little} or less over a step: ${money(missedMinor)}`
      }
      aside="What they would have cost less by their card, had they been that much lighter: a sheet less, a lighter carton, a shorter strip."
    >
      {missed.length === 0 ? null : (
        <div className={styles.open}>
          <table className={styles.table}>
            <caption className={styles.caption}>Parcels a little over a step</caption>
            <thead>
              <tr>
                <th scope="col">Parcel</th>
                <th scope="col" className={styles.price}>
                  Over by
                </th>
                <th scope="col" className={styles.price}>
                  It cost
                </th>
              </tr>
            </thead>
            <tbody>
              {missed.map(({ row, overMg, minor }) => (
                <tr key={row.id}>
                  <th scope="row">
                    <Link href={`/parcels/${encodeURIComponent(row.id)}`}>{contentsText(row.pieces)}</Link>
                    <span className={styles.note}>
                      {formatDay(day(row.postedOn ?? row.packedOn))}
                      {row.scaleTyped === null ? "" : `, ${row.scaleTyped}`}
                    </span>
                  </th>
                  <td className={styles.price}>{mass(overMg)}</td>
                  <td className={styles.price}>{money(minor)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
    </Section>
  );
}
