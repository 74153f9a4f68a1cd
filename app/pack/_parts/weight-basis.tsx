import { formatMass } from "#lib/units/mass";
import type { ExpectedWeight } from "../expected-weight";
import { oddsWords } from "../odds-words";
import type { PackingChoices } from "../packing-choices";
import type { WeightOutlook } from "../weight-outlook";
import styles from "./pack.module.css";

type WeightBasisProps = {
  readonly weight: ExpectedWeight;
  readonly outlook: WeightOutlook | null;
  readonly choices: Pick<PackingChoices, "measures" | "promiseShare">;
};

/** How sure the weight is, and what it rests on. */
export function WeightBasis({ weight, outlook, choices }: WeightBasisProps) {
  return <p className={styles.quiet}>{basisWords({ weight, outlook, choices })}</p>;
}

function basisWords({ weight, outlook, choices }: WeightBasisProps): string {
  const { measures, promiseShare } = choices;
  if (weight.kind === "part-known") {
    const known =
      weight.knownMg === 0 ? "Nothing of it is known:" : `${formatMass(weight.knownMg, measures)} without`;
    return `${known} ${weight.unknown.join(", ")}. The scale decides.`;
  }
  if (outlook === null) return "An estimate from pieces, card and carton: check it on the scale.";
  const most = `${oddsWords(promiseShare)} stay under ${formatMass(outlook.mostMg, measures)}`;
  if (outlook.weight.guess)
    return `A guess by the bill, as fewer than five such parcels were weighed: ${most}.`;
  const like = outlook.weight.basis === "group" ? "packed just so" : "of this item type";
  return `By ${outlook.weight.parcels} parcels ${like}: ${most}. The bill says ${formatMass(weight.mg, measures)}.`;
}
