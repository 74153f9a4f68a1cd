import { WEEKS_WITHOUT_USE } from "#lib/forecast/shop/supply-forecast";
import { ButtonLink } from "../../_parts/button-link";
import { Page } from "../../_parts/page";
import type { AskedDay } from "../../this-week/asked-day";
import { withDay } from "../outlook-now";
import type { Subject } from "../subject";

type NotUsedProps = {
  readonly subject: Subject;
  readonly asked: AskedDay;
  /** whether anything can be forecast in this shop */
  readonly hasForecast: boolean;
};

/** Says that nothing is expected of a subject, and why. */
export function NotUsed({ subject, asked, hasForecast }: NotUsedProps) {
  const name = subject.name ?? "Parcels";
  return (
    <Page
      width="narrow"
      finding={
        hasForecast ? `${name}: no use is expected.` : `${name}: there is nothing to forecast from yet.`
      }
      aside={
        hasForecast
          ? reason(subject)
          : "Record some parcels, or say under Setup how many you guess to send a week."
      }
      actions={
        <>
          <ButtonLink href={withDay("/outlook", asked)}>All of Outlook</ButtonLink>
          {subject.kind === "supply" ? (
            <ButtonLink href={`/supplies/${subject.id}`}>On the shelf</ButtonLink>
          ) : null}
          {hasForecast ? null : <ButtonLink href="/setup#shop">Enter a guess</ButtonLink>}
        </>
      }
    />
  );
}

function reason({ kind }: Subject): string {
  if (kind === "supply") {
    return `It was not used in the last ${WEEKS_WITHOUT_USE} weeks, and no recipe of what is sold takes it. Write it into a recipe, or record a parcel that uses it, and a forecast appears.`;
  }
  return "No piece of it was sold, or it has no recipe yet. Write its recipe and record a parcel, and a forecast appears.";
}
