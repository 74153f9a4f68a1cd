import { Button } from "../../_parts/button";
import { ButtonLink } from "../../_parts/button-link";
import { ChoiceField } from "../../_parts/choice-field";
import { Field } from "../../_parts/field";
import type { ListedParcels } from "../parcel-filter-from";
import styles from "./parcels.module.css";

type ParcelFilterProps = {
  readonly itemTypes: readonly { readonly id: string; readonly name: string }[];
  readonly filter: ListedParcels;
};

/** Narrows the list by item type and text; a plain form, so that it works at once. */
export function ParcelFilter({ itemTypes, filter }: ParcelFilterProps) {
  const types = [
    { value: "", words: "all" },
    ...itemTypes.map((type) => ({ value: type.id, words: type.name })),
  ];
  return (
    <form action="/parcels" method="get" className={styles.filter} aria-label="Find parcels">
      <ChoiceField
        label="Item type"
        name="type"
        choices={types}
        defaultValue={filter.itemTypeId ?? ""}
        size="short"
      />
      <Field
        label="Order reference or note"
        name="text"
        defaultValue={filter.text ?? ""}
        size="short"
        inputMode="search"
      />
      <Button type="submit">Find</Button>
      {filter.itemTypeId === undefined && filter.text === undefined ? null : (
        <ButtonLink href="/parcels" tone="plain">
          Show all
        </ButtonLink>
      )}
    </form>
  );
}
