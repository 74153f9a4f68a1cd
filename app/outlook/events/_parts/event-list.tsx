import type { PlannedEvent } from "#lib/forecast/planned-event";
import type { ItemType } from "#prisma/records/item-types";
import { RecordForm } from "../../../_parts/record-form";
import { dropEvent, keepEvent } from "../actions";
import { eventFields } from "../event-fields";
import { eventWords } from "../event-words";
import styles from "./event-list.module.css";

type EventListProps = {
  readonly events: readonly PlannedEvent[];
  /** All item types, those out of use too. */
  readonly itemTypes: readonly ItemType[];
};

/** Events with their days, how much more and for what; each can be changed and taken off. */
export function EventList({ events, itemTypes }: EventListProps) {
  const names = new Map(itemTypes.map((itemType) => [itemType.id, itemType.name]));
  return (
    <ul className={styles.list}>
      {events.map((event) => (
        <li key={event.id} className={styles.row}>
          <p className={styles.main}>
            {event.name} <span className={styles.aside}>{eventWords(event, names)}</span>
          </p>
          <details className={styles.details}>
            <summary>Change {event.name}</summary>
            <RecordForm
              action={keepEvent.bind(null, event.id)}
              label={`${event.name} from ${event.fromDay}`}
              fields={eventFields(event, itemTypes)}
              submit="Save the event"
            />
            <RecordForm
              action={dropEvent.bind(null, event.id)}
              label={`Take off ${event.name} from ${event.fromDay}`}
              fields={[]}
              submit="Take this event off"
              tone="plain"
            />
          </details>
        </li>
      ))}
    </ul>
  );
}
