"use client";

import { Button } from "react-aria-components";
import { classList } from "../../_parts/class-list";
import type { ItemTypeChoice } from "../packing-choices";
import styles from "./pack.module.css";

const CHIPS_SHOWN = 7;

type TypeChipsProps = {
  /** Most packed first. */
  readonly itemTypes: readonly ItemTypeChoice[];
  readonly chosenId: string | null;
  readonly onChoose: (itemTypeId: string) => void;
};

/** The item types to tap, most packed first; the rest stand behind "another…". */
export function TypeChips({ itemTypes, chosenId, onChoose }: TypeChipsProps) {
  const shown = itemTypes.filter((type, index) => index < CHIPS_SHOWN || type.id === chosenId);
  const others = itemTypes.filter((type) => !shown.includes(type));
  return (
    <fieldset className={styles.chips} aria-label="What is packed">
      {shown.map((type) => (
        <Button
          key={type.id}
          aria-pressed={type.id === chosenId}
          className={classList(styles.chip, type.id === chosenId && styles.chosen)}
          onPress={() => onChoose(type.id)}
        >
          {type.name}
          {type.recent === 0 ? null : (
            <>
              <span className={styles.chipCount} aria-hidden="true">
                {type.recent}
              </span>
              <span className={styles.heard}>, {type.recent} of late</span>
            </>
          )}
        </Button>
      ))}
      {others.length === 0 ? null : (
        <select
          aria-label="Another item type"
          className={styles.chip}
          value=""
          onChange={(event) => onChoose(event.target.value)}
        >
          <option value="" disabled>
            another…
          </option>
          {others.map((type) => (
            <option key={type.id} value={type.id}>
              {type.name}
            </option>
          ))}
        </select>
      )}
    </fieldset>
  );
}
