import type { SubjectForecast } from "#lib/forecast/shop/subject-forecast";
import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import { Section } from "../../_parts/section";
import { Sentence } from "../../_parts/sentence";
import { SentenceChoice } from "../../_parts/sentence-choice";
import { STYLE_WORDS } from "../../pack/parcel-words";
import type { SubjectFacts } from "../read-subject";
import type { Query, WhatIfReading } from "../what-if-form";
import { percentChoices } from "../what-if-words";
import { WhatIfAnswer } from "./what-if-answer";

const FIRST_ASKED = "20";

type WhatIfProps = {
  readonly facts: SubjectFacts;
  /** the address; what it chose stays chosen, also where it is refused */
  readonly query: Query;
  readonly reading: WhatIfReading;
  /** forecast with the change; null where nothing is asked, or nothing would be used */
  readonly changed: SubjectForecast | null;
  /** item types to choose from; none but for a supply */
  readonly itemTypes: readonly { readonly id: string; readonly name: string }[];
  /** the day that the address asks for */
  readonly today: string | null;
};

/** A change asked about in one sentence, and what it would do. Nothing is kept of it. */
export function WhatIf({ facts, query, reading, changed, itemTypes, today }: WhatIfProps) {
  const change = reading.kind === "change" ? reading.change : null;
  return (
    <Section
      title="What if?"
      id="what-if"
      aside="Only asked: nothing is saved, and the forecast above stays as it is."
    >
      <form method="get" action={`${facts.subject.href}#what-if`} aria-label="What if">
        {today === null ? null : <input type="hidden" name="today" value={today} />}
        <Sentence>
          If I sent{" "}
          <SentenceChoice
            label="how many more parcels"
            name="parcels"
            choices={percentChoices(change?.parcelsPercent ?? null)}
            defaultValue={chosen(query.parcels) ?? FIRST_ASKED}
          />{" "}
          parcels
          {itemTypes.length === 0 ? null : (
            <>
              {" "}
              and packed{" "}
              <SentenceChoice
                label="which item type"
                name="type"
                choices={[
                  { value: "", words: "everything as now" },
                  ...itemTypes.map(({ id, name }) => ({ value: id, words: name })),
                ]}
                defaultValue={chosen(query.type)}
              />{" "}
              on{" "}
              <SentenceChoice
                label="cushion style of that item type"
                name="style"
                choices={CUSHION_STYLES.map((style) => ({ value: style, words: STYLE_WORDS[style] }))}
                defaultValue={chosen(query.style)}
              />
            </>
          )}
          …
        </Sentence>
        <Button type="submit">Show what it would take</Button>
      </form>
      {reading.kind === "unreadable" ? (
        <Message kind="error" title={reading.title}>
          {reading.wayOut}
        </Message>
      ) : null}
      {change === null ? null : <WhatIfAnswer facts={facts} changed={changed} />}
    </Section>
  );
}

function chosen(parameter: Query[string]): string | undefined {
  return typeof parameter === "string" ? parameter : undefined;
}
