import { ButtonLink } from "../../_parts/button-link";
import { Section } from "../../_parts/section";

/** What a shop without supplies sees: the one thing to do first. */
export function EmptyShelf() {
  return (
    <Section title="Say first what you pack with" rule="strong">
      <p>
        The check begins with the supplies: tissue, bubble, paper, tape, cartons. Add each with the unit that
        you reach for, or import the parcels you have sent. The demo shop (<code>npm start -- --demo</code>)
        shows how it looks when filled.
      </p>
      <ButtonLink href="/supplies/new" tone="primary">
        Add a supply
      </ButtonLink>
    </Section>
  );
}
