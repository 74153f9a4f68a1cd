import type { PlannedEvent } from "#lib/forecast/planned-event";
import { ButtonLink } from "../../_parts/button-link";
import { Section } from "../../_parts/section";
import { eventWords } from "../events/event-words";
import styles from "./rests-on.module.css";

type EventsAheadProps = {
  /** events that are on or come */
  readonly events: readonly PlannedEvent[];
  readonly names: ReadonlyMap<string, string>;
};

/** Planned events that are counted in, with the way to change them. */
export function EventsAhead({ events, names }: EventsAheadProps) {
  return (
    <Section
      title={events.length === 0 ? "No event is planned ahead" : "Planned events that are counted in"}
      id="events"
      aside={
        events.length === 0
          ? "Do you know of a market or an offer? Say how much more it lets go out, and every forecast counts it in."
          : "How much more they let go out is your guess."
      }
    >
      {events.length === 0 ? null : (
        <ul className={styles.list}>
          {events.map((event) => (
            <li key={event.id}>
              <strong>{event.name}</strong> {eventWords(event, names)}
            </li>
          ))}
        </ul>
      )}
      <p className={styles.action}>
        <ButtonLink href="/outlook/events">
          {events.length === 0 ? "Plan an event" : "Change the events"}
        </ButtonLink>
      </p>
    </Section>
  );
}
