import type { Day } from "#lib/units/day";
import { formatDay } from "#lib/units/day-text";
import type { ReadRateCard } from "#prisma/records/rate-cards";
import type { Zone } from "#prisma/records/zones";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { putFirst } from "../actions";
import { serviceState, sourceWords } from "../postage-finding";
import { withZoneNames } from "../rate-card-form";
import type { ShopService } from "../shop-services";
import { CardChange } from "./card-change";
import { CardRules } from "./card-rules";
import styles from "./postage.module.css";

type ServiceSectionProps = {
  readonly of: ShopService;
  readonly isMain: boolean;
  /** zones of the shop, those taken off too */
  readonly zones: readonly Zone[];
  readonly today: Day;
};

/** A service: the card that holds, those that follow, and those that ran out. */
export function ServiceSection({ of, isMain, zones, today }: ServiceSectionProps) {
  const { service, holding, coming, past } = of;
  const inUse = zones.filter(({ retired }) => !retired).map(({ name }) => name);
  const body = (kept: ReadRateCard) => {
    const named = withZoneNames(kept, zones);
    const name = `${service} from ${formatDay(kept.validFrom, { year: true })}`;
    return (
      <>
        <p className={styles.small}>{sourceWords(kept)}</p>
        <CardRules card={named.card} name={name} />
        <CardChange id={kept.id} sourced={named} name={name} zones={inUse} today={today} />
      </>
    );
  };
  return (
    <Section
      title={service}
      aside={`${serviceState(of, today)}${isMain ? " Pack and Cartons reckon with this service." : ""}`}
    >
      {holding === null ? null : body(holding)}
      {[...coming, ...past].map((kept) => (
        <details key={kept.id} className={styles.fold}>
          <summary>{spanWords(kept, coming.includes(kept))}</summary>
          {body(kept)}
        </details>
      ))}
      {isMain ? null : (
        <RecordForm
          action={putFirst.bind(null, service)}
          label={`Reckon with ${service}`}
          fields={[]}
          submit={`Reckon with ${service} at Pack`}
          tone="plain"
        />
      )}
    </Section>
  );
}

function spanWords({ validFrom, validTo }: ReadRateCard, isComing: boolean): string {
  const from = formatDay(validFrom, { year: true });
  const to = validTo === null ? "on" : `to ${formatDay(validTo, { year: true })}`;
  return `${isComing ? "Followed by the card" : "The card"} from ${from} ${to}`;
}
