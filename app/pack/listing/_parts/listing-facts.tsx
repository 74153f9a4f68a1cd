import { formatMass } from "#lib/units/mass";
import { formatMoney, minorOfCost, roundHalfEven } from "#lib/units/money";
import { costWords } from "../../../recipes/cost-words";
import { SafetyLine } from "../../_parts/safety-line";
import { oddsWords } from "../../odds-words";
import type { PackingChoices } from "../../packing-choices";
import type { ListingAnswer } from "../listing-answer";
import { weightBasisWords } from "../weight-basis-words";
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
/** What the promise rests on: weight, odds of each step, carton, style, what packing and sending cost. */
export function ListingFacts({ answer, choices, hasZones }: ListingFactsProps) {
  const carton = choices.supplies.find(({ id }) => id === answer.cartonId)?.name ?? "none named";
  return (
    <>
      <dl className={styles.facts}>
        <WeightFacts answer={answer} choices={choices} />
        <dt>Carton</dt>
        <dd>{carton}</dd>
        <dt>Packed on</dt>
        <dd>{answer.style}</dd>
        <CostFacts answer={answer} choices={choices} hasZones={hasZones} />
      </dl>
      <div className={styles.safety}>
        <SafetyLine mg={answer.outlook?.mostMg ?? 0} />
      </div>
    </>
  );
}

function WeightFacts({ answer, choices }: Omit<ListingFactsProps, "hasZones">) {
  const { outlook } = answer;
  if (outlook === null) return null;
  const { weight, mostMg, steps } = outlook;
  const likely = formatMass(weight.likelyMg, choices.measures);
  const most = formatMass(mostMg, choices.measures);
  const enough = steps.findIndex(({ odds }) => odds > NEARLY_ALL);
  const telling = enough < 0 ? steps : steps.slice(0, enough + 1);
  return (
    <>
      <dt>Weight</dt>
      <dd>
        {likely} likely, {oddsWords(choices.promiseShare)} under {most};{" "}
        {weightBasisWords(answer.from, weight, choices)}
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

function CostFacts({ answer, choices, hasZones }: ListingFactsProps) {
  const { book, replacement } = answer.cost;
  const { postageMinor } = answer;
  const isPriced = replacement.unknown.length === 0 && postageMinor !== null;
  const nameOf = (id: string) => choices.supplies.find((supply) => supply.id === id)?.name ?? id;
  const missing = (ids: readonly string[], why: string) =>
    ids.length === 0 ? "" : ` Left out, ${why}: ${ids.map(nameOf).join(", ")}.`;
  return (
    <>
      <dt>Packing</dt>
      <dd>
        materials {costWords(replacement, choices)} bought again today, {costWords(book, choices)} at their
        cost in the books.
        {missing(replacement.unknown, "no price on offer")}
        {missing(book.unknown, "no cost in the books")}
      </dd>
      <dt>Postage</dt>
      <dd>{postageWords(postageMinor, choices, hasZones)}</dd>
      {isPriced ? (
        <>
          <dt>Together</dt>
          <dd>
            {money(minorOfCost(replacement.cost, roundHalfEven) + Math.round(postageMinor), choices)} to pack
            and send
          </dd>
        </>
      ) : null}
    </>
  );
}

function money(minor: number, { currency, minorDigits }: PackingChoices): string {
  return formatMoney(minor, currency, minorDigits);
}

function postageWords(minor: number | null, choices: PackingChoices, hasZones: boolean): string {
  if (minor === null) return choices.steps.length === 0 ? "no rate card holds today" : "not known";
  const where = hasZones ? "where your parcels went in the last half year" : "all zones alike";
  return `${money(Math.round(minor), choices)} on average over ${where}, by weight alone`;
}
