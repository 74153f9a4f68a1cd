"use client";

import { formatMass } from "#lib/units/mass";
import type { Measures } from "#lib/units/measures";
import { Button } from "../../_parts/button";
import { Message } from "../../_parts/message";
import type { DraftChange } from "../draft-change";
import type { PackingDraft } from "../packing-draft";
import type { ScaleCheck } from "../scale-check";

type ScaleMessageProps = {
  readonly check: ScaleCheck;
  readonly draft: PackingDraft;
  readonly measures: Measures;
  readonly onChange: (change: DraftChange) => void;
};

/** A reading in the wrong unit is asked about, one over the promise is said plainly; neither blocks the packer. */
export function ScaleMessage({ check, draft, measures, onChange }: ScaleMessageProps) {
  switch (check.kind) {
    case "slip":
      return (
        <Message kind="note" title={`Does the scale say ${draft.scale.trim()}, or ${check.typed}?`}>
          <Button onPress={() => onChange({ kind: "text", part: "scale", text: check.typed })}>
            It was {check.typed}
          </Button>
        </Message>
      );
    case "over":
      return (
        <Message
          kind="note"
          title={`${formatMass(check.byMg, measures)} over the ${draft.promised.trim()} that was promised`}
        >
          Take out some fill, or swap paper for bubble; else the next step's postage is due.
        </Message>
      );
    default:
      return null;
  }
}
