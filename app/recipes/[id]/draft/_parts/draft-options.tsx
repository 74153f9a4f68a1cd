import { MATERIALS } from "#lib/packing/material";
import { MATERIAL_WORDS } from "#lib/packing/recipe/drafted-step";
import { Button } from "../../../../_parts/button";
import { ChoiceField } from "../../../../_parts/choice-field";
import { Field } from "../../../../_parts/field";
import type { DraftQuery } from "../draft-choice";
import type { DraftGround } from "../read-draft";
import styles from "./draft.module.css";

type DraftOptionsProps = {
  readonly ground: DraftGround;
  readonly query: DraftQuery;
  /** The cushion that the habits ask for: "2 in". */
  readonly usualCushion: string;
};

const BOXES = [
  { value: "one", words: "no, one carton" },
  { value: "two", words: "yes, with an outer carton round it" },
];

/** What the draft is made with: pieces, carton, cushion, and which supply where the shop has several of a material. */
export function DraftOptions({ ground, query, usualCushion }: DraftOptionsProps) {
  const { shelf, supplies, reading } = ground;
  const problems = reading.kind === "refused" ? reading.problems : {};
  const nameOf = (supplyId: string) => supplies.get(supplyId)?.name ?? supplyId;
  const several = MATERIALS.map((material) => ({
    material,
    choices: shelf.supplies
      .filter((supply) => supply.material === material)
      .map(({ supplyId, name }) => ({ value: supplyId, words: name })),
  })).filter(({ choices }) => choices.length > 1);
  const cartons = shelf.cartons.map(({ supplyId }) => ({ value: supplyId, words: nameOf(supplyId) }));
  return (
    <form method="get" className={styles.options} aria-label="What to draft with">
      <Field
        label="Pieces in the parcel"
        name="pieces"
        inputMode="numeric"
        size="short"
        defaultValue={query["pieces"] ?? "1"}
        error={problems["pieces"]}
      />
      <ChoiceField
        label={query["boxes"] === "two" ? "Inner carton" : "Carton"}
        name="carton"
        choices={[{ value: "", words: "the smallest that leaves the cushion" }, ...cartons]}
        defaultValue={query["carton"] ?? ""}
        error={problems["carton"]}
      />
      <ChoiceField
        label="Box in a box"
        name="boxes"
        choices={BOXES}
        defaultValue={query["boxes"] ?? "one"}
        error={problems["boxes"]}
      />
      <Field
        label={`Cushion, if not ${usualCushion}`}
        name="cushion"
        size="short"
        defaultValue={query["cushion"] ?? ""}
        error={problems["cushion"]}
      />
      {several.map(({ material, choices }) => (
        <ChoiceField
          key={material}
          label={`Which ${MATERIAL_WORDS[material]}`}
          name={`use.${material}`}
          choices={choices}
          defaultValue={query[`use.${material}`] ?? choices[0]?.value}
        />
      ))}
      <Button type="submit">Draft again</Button>
    </form>
  );
}
