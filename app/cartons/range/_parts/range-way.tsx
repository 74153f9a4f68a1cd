import type { KeptRange } from "#prisma/records/carton-ranges";
import { Section } from "../../../_parts/section";
import { type ShopWords, valueText } from "../../choice-words";
import type { RangeCandidate } from "../range-question";
import styles from "./range.module.css";

type RangeWayProps = {
  readonly kept: KeptRange;
  /** which of the ranges, by its place */
  readonly at: number;
  readonly candidates: readonly RangeCandidate[];
  readonly shop: ShopWords;
};

/** What each size of a range earns, and the way there from today's, step by step. */
export function RangeWay({ kept, at, candidates, shop }: RangeWayProps) {
  const [earns, way] = [kept.earns[at], kept.steps[at]];
  if (earns === undefined || way === undefined) return null;
  const name = (size: number) => candidates[size]?.name ?? "";
  return (
    <>
      <Section title="What each size earns" aside="What a year's parcels would cost more without it.">
        <ul className={styles.list}>
          {earns.map(({ size, parcels, earnedValue, onlyHere }) => (
            <li key={size}>
              {name(size)}: {parcels === 1 ? "one parcel" : `${parcels} parcels`}
              {onlyHere > 0
                ? onlyHereWords(parcels, onlyHere)
                : `, earns ${valueText(earnedValue, shop)} a year`}
              {candidates[size]?.isPriceGuess === true ? "; its price is a guess by its board" : ""}
            </li>
          ))}
        </ul>
      </Section>
      <Section
        title={way.steps.length === 0 ? "That is today's range" : "The way there"}
        aside={
          way.neverRises || way.steps.length === 0
            ? undefined
            : "Not every step saves by itself: some cost more until the next is taken."
        }
      >
        <ol className={styles.list}>
          {way.steps.map((step) => (
            <li key={`${step.buy} ${step.leave?.size}`}>{stepWords(step, name, shop)}</li>
          ))}
        </ol>
      </Section>
    </>
  );
}

/** No money is said of these: without the size they could not be packed. */
function onlyHereWords(parcels: number, onlyHere: number): string {
  if (onlyHere === parcels) return parcels === 1 ? ", which fits no other" : ", none of which fits another";
  return onlyHere === 1 ? ", one of which fits no other" : `, ${onlyHere} of which fit no other`;
}

type Step = KeptRange["steps"][number]["steps"][number];

function stepWords({ buy, leave, change }: Step, name: (size: number) => string, shop: ShopWords): string {
  const left = leave === null ? null : leaveWords(name(leave.size), leave.onHand);
  const bought = buy === null ? null : `buy ${name(buy)}`;
  const what = [left, bought].filter((each) => each !== null).join("; ");
  const saves = change <= 0 ? `saves ${valueText(-change, shop)}` : `costs ${valueText(change, shop)} more`;
  return `${what.charAt(0).toUpperCase()}${what.slice(1)} (${saves} a year).`;
}

function leaveWords(size: string, onHand: number | null): string {
  if (onHand === null) return `stop buying ${size} and use up what is there`;
  return onHand > 0 ? `run ${size} down (${onHand} there) and stop buying it` : `stop buying ${size}`;
}
