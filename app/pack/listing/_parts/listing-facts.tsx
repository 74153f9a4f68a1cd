import { formatMass } from "#lib/units/mass";
import { formatMoney } from "#lib/units/money";
import { oddsWords } from "../../odds-words";
import type { PackingChoices } from "../../packing-choices";
import type { WeightOutlook } from "../../weight-outlook";
import type { ListingAnswer } from "../listing-answer";
import styles from "./listing.module.css";

type ListingFactsProps = {
  readonly answer: ListingAnswer;
  readonly choices: PackingChoices;
  /** Whether parcels tell where the next one goes. */
  readonly hasZones: boolean;
};

/** Steps that hardly any parcel stays under are left out, and those above one that holds nearly all. */
const LEAST_ODDS = 0.005;
const NEARLY_ALL = 0.995;

/** What the promise rests on: weight, odds of each step, carton, style, postage. */
export function ListingFacts({ answer, choices, hasZones }: ListingFactsProps) {
  const cartonId = answer.draft.cartons[0]?.supplyId;
  const carton = choices.supplies.find(({ id }) => id === cartonId)?.name ?? "none named";
  return (
    <dl className={styles.facts}>
      {answer.outlook === null ? null : <WeightFacts outlook={answer.outlook} choices={choices} />}
      <dt>Carton</dt>
      <dd>{carton}</dd>
      <dt>Packed on</dt>
      <dd>{answer.draft.style}</dd>
      <dt>Postage</dt>
      <dd>{postageWords(answer.postageMinor, choices, hasZones)}</dd>
    </dl>
  );
}

function WeightFacts({
  outlook,
  choices,
}: {
  readonly outlook: WeightOutlook;
  readonly choices: PackingChoices;
}) {
  const { weight, mostMg, steps } = outlook;
  const likely = formatMass(weight.likelyMg, choices.measures);
  const most = formatMass(mostMg, choices.measures);
  const enough = steps.findIndex(({ odds }) => odds > NEARLY_ALL);
  const telling = enough < 0 ? steps : steps.slice(0, enough + 1);
  const basis = weight.guess ? "a guess by the card's bill" : `from ${weight.parcels} weighed parcels`;
  return (
    <>
      <dt>Weight</dt>
      <dd>
        {likely} likely, {oddsWords(choices.promiseShare)} under {most}; {basis}
      </dd>
      {telling
        .filter(({ odds }) => odds > LEAST_ODDS)
        .map((step) => (
          <div key={step.label} className={styles.step}>
            <dt>Up to {step.label}</dt>
            <dd>{oddsWords(step.odds)}</dd>
          </div>
        ))}
    </>
  );
}

function postageWords(minor: number | null, choices: PackingChoices, hasZones: boolean): string {
  if (minor === null) return choices.steps.length === 0 ? "no rate card holds today" : "not known";
  const where = hasZones ? "where your parcels went in the last half year" : "all zones alike";
  return `${formatMoney(Math.round(minor), choices.currency, choices.minorDigits)} on average over ${where}, by weight alone`;
}
