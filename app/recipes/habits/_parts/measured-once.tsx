import { describedSupply } from "#lib/packing/described-supply";
import { unitArea } from "#lib/packing/unit-area";
import type { Supply } from "#prisma/records/supplies";
import { RecordForm } from "../../../_parts/record-form";
import { Section } from "../../../_parts/section";
import { keepFilled, keepFinished, keepWeighed } from "../measured-actions";
import { filledFields, finishedFields, weighedFields } from "../measured-fields";

/** What a shop measures once of its own paper, bubble and tape, instead of the guesses. */
export function MeasuredOnce({ supplies }: { readonly supplies: readonly Supply[] }) {
  const cartons = supplies.filter(({ kind, heightUm }) => kind === "carton" && heightUm !== null);
  const soft = supplies.filter(({ kind }) => kind !== "carton");
  const fills = soft.filter((supply) => {
    const described = describedSupply({ ...supply, bulkUm: null });
    return described.kind === "described" && unitArea(described.supply) !== null;
  });
  const tapes = soft.filter(({ kind, useUnit }) => kind === "tape" && useUnit !== "strip");
  return (
    <>
      {cartons.length === 0 || fills.length === 0 ? null : (
        <Section
          title="Fill one empty carton and count"
          aside="As you fill a parcel. No published figure says how far crumpled paper goes: yours does."
        >
          <RecordForm
            action={keepFilled}
            label="One carton filled"
            layout="line"
            fields={filledFields(cartons, fills)}
            submit="Keep how far it goes"
          />
        </Section>
      )}
      {soft.length === 0 ? null : (
        <Section title="Weigh ten at once" aside="Without a tray, or with the scale set to nothing under it.">
          <RecordForm
            action={keepWeighed}
            label="Weighed at once"
            layout="line"
            fields={weighedFields(soft)}
            submit="Keep what one weighs"
          />
        </Section>
      )}
      {cartons.length === 0 || tapes.length === 0 ? null : (
        <Section
          title="Rolls of tape finished"
          aside="Cut away from you. Counted over some weeks it is surer."
        >
          <RecordForm
            action={keepFinished}
            label="Rolls finished"
            layout="line"
            fields={finishedFields(tapes, cartons)}
            submit="Keep how much tape it takes"
          />
        </Section>
      )}
    </>
  );
}
