import type { Metadata } from "next";
import Link from "next/link";
import { rangeKept } from "#prisma/records/carton-ranges";
import { FollowsRecords } from "../../_parts/follows-records";
import { Message } from "../../_parts/message";
import { Page } from "../../_parts/page";
import { RecordForm } from "../../_parts/record-form";
import { Section } from "../../_parts/section";
import { shopNow } from "../../_parts/shop-now";
import { styleFrom } from "../../pack/style-from";
import { readCartonShelf } from "../read-carton-shelf";
import styles from "./_parts/range.module.css";
import { RangeCurve } from "./_parts/range-curve";
import { RangeWay } from "./_parts/range-way";
import { workOutRange } from "./actions";
import { rangeFinding } from "./range-finding";
import { isWorking } from "./range-job";
import { rangeQuestion } from "./range-question";
import { COMMON_SIZES } from "./range-sizes";

export const metadata: Metadata = { title: "Which sizes to keep" };

type RangePageProps = { readonly searchParams: Promise<{ readonly sizes?: string | string[] }> };

/** Which carton sizes to stock for what was packed in the last year. */
export default async function RangePage({ searchParams }: RangePageProps) {
  const now = await shopNow();
  const { db, shop, version } = now;
  const asked = Number((await searchParams).sizes);
  const shelf = await readCartonShelf(now);
  const text = shelf.rangeSizes === "" ? COMMON_SIZES : shelf.rangeSizes;
  const read = rangeQuestion(shelf, styleFrom(shop.defaultStyle), text, shop);
  const question = read.kind === "question" ? read.question : null;
  const kept = question === null ? null : ((await rangeKept(db, question.hash))?.range ?? null);
  const todaySizes = shelf.cartons.length;
  const shown =
    kept?.points.find(({ most }) => most === asked) ??
    kept?.points.find(({ most }) => most === todaySizes) ??
    kept?.points.at(-1);
  return (
    <Page
      finding={rangeFinding(kept, todaySizes, shop)}
      aside={`From ${question?.parcels ?? 0} parcels of the last year whose sizes and weight are known, packed as you pack today: carton, fill, tape and postage. An estimate.`}
    >
      <FollowsRecords version={version} />
      {question !== null && isWorking(question.hash) ? (
        <Message
          kind="note"
          title={`Being worked out: ${kept?.points.length ?? 0} of ${question.task.most} ranges so far.`}
        />
      ) : null}
      {kept?.failed == null ? null : (
        <Message kind="error" title="It could not be worked out to its end.">
          {kept.failed} Press the button again.
        </Message>
      )}
      {kept === null || kept.today === null || shown === undefined || question === null ? null : (
        <>
          <div className={styles.scroll}>
            <RangeCurve
              kept={kept}
              today={kept.today}
              candidates={question.candidates}
              todaySizes={todaySizes}
              shop={shop}
              shown={shown.most}
            />
          </div>
          <p className={styles.ways}>
            The way to{" "}
            {kept.points.map(({ most }) => (
              <Link key={most} href={`/cartons/range?sizes=${most}`} aria-current={most === shown.most}>
                {most}{" "}
              </Link>
            ))}
            sizes:
          </p>
          <RangeWay
            kept={kept}
            at={kept.points.indexOf(shown)}
            candidates={question.candidates}
            shop={shop}
          />
        </>
      )}
      <Section
        title="Sizes that you could buy"
        aside="Inside sizes, a line each; the price of one behind a semicolon. Without a price it is guessed by the area of the board. Today's cartons are always looked at."
      >
        <RecordForm
          action={workOutRange}
          label="Sizes that you could buy"
          fields={[
            { name: "sizes", label: "Sizes", kind: "lines", value: text, hint: "12 x 9 x 6 in; 0.85" },
          ]}
          submit={kept === null ? "Work it out" : "Work it out again"}
          tone="primary"
        />
      </Section>
      <p>
        <Link href="/cartons">All the cartons</Link>
      </p>
    </Page>
  );
}
