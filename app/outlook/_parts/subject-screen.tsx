import { ButtonLink } from "../../_parts/button-link";
import { Message } from "../../_parts/message";
import { Page } from "../../_parts/page";
import { basisWords } from "../basis-words";
import { fanTitle } from "../fan-title";
import { leansOn } from "../leans-on";
import { type OutlookNow, withDay } from "../outlook-now";
import { outlookGround, readSubject } from "../read-subject";
import { readWhatIfAnswer } from "../read-what-if-answer";
import type { Subject } from "../subject";
import { subjectFinding } from "../subject-finding";
import type { Query } from "../what-if-form";
import { DayProblem } from "./day-problem";
import { Fan } from "./fan";
import { Method } from "./method";
import { NotUsed } from "./not-used";
import { RestsOn } from "./rests-on";
import { RunningTotalsTable } from "./running-totals-table";
import { Said } from "./said";
import { WhatIf } from "./what-if";

type SubjectScreenProps = {
  readonly now: OutlookNow;
  readonly subject: Subject;
  readonly query: Query;
};

/** One subject: what is expected, how sure that is, and how it was worked out. */
export async function SubjectScreen({ now, subject, query }: SubjectScreenProps) {
  const { db, shop, today, asked } = now;
  const ground = await outlookGround(db, shop, today);
  const facts = await readSubject(db, { subject, shop, today, ground });
  if (facts === null)
    return <NotUsed subject={subject} asked={asked} hasForecast={ground.kept.parcels !== null} />;
  const { forecast, totals, past } = facts;
  const whatIf = await readWhatIfAnswer(db, { query, subject, today });
  const total = totals[past.horizonWeeks - 1] ?? totals[0];
  const leaning = leansOn(forecast, {
    guessedParcels: shop.guessedParcels,
    likeName: facts.names.get(forecast.likeId ?? "") ?? null,
  });
  const finding =
    total === undefined ? (subject.name ?? "Parcels") : subjectFinding(subject.name, total, subject.unit);
  return (
    <Page
      finding={finding}
      aside={basisWords(today, { until: ground.kept.until, guessedShare: forecast.guessedShare })}
      actions={
        <>
          <ButtonLink href={withDay("/outlook", asked)}>All of Outlook</ButtonLink>
          {subject.kind === "supply" ? (
            <ButtonLink href={`/supplies/${subject.id}`}>On the shelf</ButtonLink>
          ) : null}
          {subject.kind === "item-type" ? (
            <ButtonLink href={`/recipes/${subject.id}`}>Its recipes</ButtonLink>
          ) : null}
        </>
      }
    >
      <DayProblem asked={asked} today={today} />
      {leaning === null ? null : <Message kind="note" title={leaning} />}
      <Fan facts={facts} title={fanTitle(facts.weeks, subject.unit)} />
      <RunningTotalsTable facts={facts} />
      <WhatIf
        facts={facts}
        query={query}
        reading={whatIf.reading}
        changed={whatIf.changed}
        itemTypes={whatIf.itemTypes}
        today={asked.kind === "day" ? asked.day : null}
      />
      <Method facts={facts} />
      <Said facts={facts} />
      <RestsOn assumptions={facts.assumptions} />
    </Page>
  );
}
