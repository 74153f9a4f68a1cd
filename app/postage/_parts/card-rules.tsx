import { feeWords, roundingUpWords, sizeRuleWords, wallWords } from "#lib/postage/card-words";
import type { RateCard } from "#lib/postage/rate-card";
import { rateCardFaults } from "#lib/postage/rate-card-faults";
import styles from "./postage.module.css";
import { PriceTable } from "./price-table";

type CardRulesProps = {
  /** its zones are names */
  readonly card: RateCard;
  /** tells its tables from those of other cards */
  readonly name: string;
};

/** Prices and rules of a card in words. */
export function CardRules({ card, name }: CardRulesProps) {
  const rounding = roundingUpWords(card);
  const warnings = rateCardFaults(card).filter(({ severity }) => severity === "warning");
  return (
    <>
      {card.bands.map((band) => {
        const walls = wallWords(band);
        const caption = band.name === "" ? `Prices of ${name}` : `Prices of ${name}, ${band.name}`;
        return (
          <div key={band.name}>
            {band.name === "" ? null : <h3 className={styles.bandName}>{band.name}</h3>}
            {walls === null ? null : <p className={styles.small}>Takes parcels {walls}.</p>}
            <PriceTable band={band} zones={card.zones} currency={card.currency} caption={caption} />
            {band.countsSize || card.dimensional === null ? null : (
              <p className={styles.small}>Size adds no weight here.</p>
            )}
          </div>
        );
      })}
      {warnings.map(({ message }) => (
        <p key={message} className={styles.act}>
          Worth a look: {message}
        </p>
      ))}
      <ul className={styles.rules}>
        <li>{sizeRuleWords(card.dimensional)}</li>
        {rounding === null ? null : <li>{rounding}</li>}
        {card.fees.length === 0 ? <li>No fees are on this card.</li> : null}
        {card.fees.map((fee) => (
          <li key={feeWords(fee, card.currency)}>{feeWords(fee, card.currency)}</li>
        ))}
      </ul>
    </>
  );
}
