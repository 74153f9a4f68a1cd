import type { CSSProperties } from "react";
import { unitWord } from "#lib/units/use-unit";
import type { Supply } from "#prisma/records/supplies";
import { classList } from "../../_parts/class-list";
import type { KindAnswer } from "../cushion-answer";
import { type PriceStrip, priceAxis } from "../price-axis";
import styles from "./paper-or-bubble.module.css";

type TurningPricesProps = {
  readonly supply: Supply;
  /** 1/10,000 minor unit a use unit, above 0 */
  readonly priceNow: number;
  readonly kinds: readonly KindAnswer[];
  readonly nameOf: (kind: KindAnswer) => string;
  /** a price for a use unit with its currency sign */
  readonly money: (value: number) => string;
};

const NARROWEST_WORD = 16;

/** At which price of a supply each kind of parcel turns from one style to the other, on one axis with today's price. */
export function TurningPrices({ supply, priceNow, kinds, nameOf, money }: TurningPricesProps) {
  const axis = priceAxis(kinds, supply.id, priceNow);
  const unit = unitWord(supply.useUnit, 1);
  return (
    <>
      <dl className={styles.strips}>
        <dt className={styles.axisName}>
          <span className={styles.small}>{`${supply.name}, a ${unit}`}</span>
        </dt>
        <dd className={classList(styles.stripCell, styles.axis)} aria-hidden="true">
          {axis.ticks.map(({ price, percent }) => (
            <span key={price} className={styles.tick} style={at(percent)}>
              {isNear(percent, axis.nowPercent) ? "" : money(price)}
            </span>
          ))}
          <span className={styles.nowWords} style={at(axis.nowPercent)}>
            {money(priceNow)}
          </span>
        </dd>
        {axis.strips.map((strip) => (
          <Strip
            key={nameOf(strip.kind)}
            strip={strip}
            name={nameOf(strip.kind)}
            now={axis.nowPercent}
            words={stripWords(strip, unit, money)}
          />
        ))}
      </dl>
      <p className={styles.small}>
        Each line: which style is cheaper while {supply.name} costs from nothing (left) to {money(axis.top)}{" "}
        (right) a {unit}; the upright line is the price reckoned with, {money(priceNow)}.
      </p>
    </>
  );
}

type StripProps = {
  readonly strip: PriceStrip;
  readonly name: string;
  readonly now: number;
  readonly words: string;
};

function Strip({ strip, name, now, words }: StripProps) {
  return (
    <>
      <dt>{name}</dt>
      <dd className={styles.stripCell}>
        <div className={styles.strip} role="img" aria-label={words}>
          {strip.parts.map(({ style, from, to }) => (
            <span
              key={`${style} ${from}`}
              className={classList(styles.part, styles[style])}
              style={{ ...at(from), width: `${to - from}%` }}
            >
              {to - from < NARROWEST_WORD ? "" : <span>{style}</span>}
            </span>
          ))}
          <span className={styles.now} style={at(now)} />
        </div>
      </dd>
    </>
  );
}

/**
 * What a strip shows, in words.
 *
 * @param strip turns of one kind
 * @param unit word of the use unit
 * @param money price with its sign
 * @returns "bubble below $0.40 a sq ft, paper above"
 */
export function stripWords(
  { turns, parts }: PriceStrip,
  unit: string,
  money: (value: number) => string,
): string {
  const [only] = parts;
  if (turns.length === 0) return `${only?.style ?? "one way"} at every price`;
  return turns
    .map(
      ({ price, from, to }, index) =>
        `${index === 0 ? `${from} below ${money(price)} a ${unit}, ` : `from ${money(price)} on `}${to}${index === 0 ? " above" : ""}`,
    )
    .join("; ");
}

function at(percent: number): CSSProperties {
  return { insetInlineStart: `${percent}%` };
}

/** Words nearer than this run into each other. */
function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) < 12;
}
