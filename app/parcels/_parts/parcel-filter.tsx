import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { Button } from "../../_parts/button";
import { ButtonLink } from "../../_parts/button-link";
import { ChoiceField } from "../../_parts/choice-field";
import { Field } from "../../_parts/field";
import { STYLE_WORDS } from "../../pack/parcel-words";
import type { ListedParcels } from "../parcel-filter-from";
import type { ParcelProblem } from "../parcel-problem";
import { STATE_WORDS } from "../parcel-state-words";
import styles from "./parcels.module.css";

type Named = { readonly id: string; readonly name: string; readonly retired: boolean };

type ParcelFilterProps = {
  readonly itemTypes: readonly Named[];
  readonly cartons: readonly Named[];
  readonly zones: readonly Named[];
  readonly filter: ListedParcels;
  readonly problems: readonly ParcelProblem[];
};

/** Narrows the list; a plain form, so that it works at once. */
export function ParcelFilter({ itemTypes, cartons, zones, filter, problems }: ParcelFilterProps) {
  const errorOf = (field: "from" | "to" | "style" | "only") => {
    const problem = problems.find((each) => each.field === field);
    return problem && `${problem.message} ${problem.wayOut}`;
  };
  const { from, to, style, cartonId, zoneId, state } = filter;
  const isNarrow = [from, to, style, cartonId, zoneId, state].some((asked) => asked !== undefined);
  const isFiltered = isNarrow || filter.itemTypeId !== undefined || filter.text !== undefined;
  return (
    <form action="/parcels" method="get" className={styles.filter} aria-label="Find parcels">
      <ChoiceField
        label="Item type"
        name="type"
        choices={choicesOf(itemTypes)}
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
      <details open={isNarrow || problems.length > 0} className={styles.more}>
        <summary>By day, style, carton, zone, state</summary>
        <div className={styles.filter}>
          <Field
            label="Packed from"
            name="from"
            type="date"
            defaultValue={from ?? ""}
            error={errorOf("from")}
            size="short"
          />
          <Field
            label="Packed to"
            name="to"
            type="date"
            defaultValue={to ?? ""}
            error={errorOf("to")}
            size="short"
          />
          <ChoiceField
            label="Style"
            name="style"
            choices={[ALL, ...CUSHION_STYLES.map((value) => ({ value, words: STYLE_WORDS[value] }))]}
            defaultValue={style ?? ""}
            error={errorOf("style")}
            size="short"
          />
          <ChoiceField
            label="Carton"
            name="carton"
            choices={choicesOf(cartons)}
            defaultValue={cartonId ?? ""}
            size="short"
          />
          <ChoiceField
            label="Zone"
            name="zone"
            choices={choicesOf(zones)}
            defaultValue={zoneId ?? ""}
            size="short"
          />
          <ChoiceField
            label="What became of them"
            name="only"
            choices={[ALL, ...STATE_WORDS]}
            defaultValue={state ?? ""}
            error={errorOf("only")}
            size="short"
          />
        </div>
      </details>
      <Button type="submit">Find</Button>
      {isFiltered ? (
        <ButtonLink href="/parcels" tone="plain">
          Show all
        </ButtonLink>
      ) : null}
    </form>
  );
}

const ALL = { value: "", words: "all" };

function choicesOf(known: readonly Named[]) {
  return [
    ALL,
    ...known.map(({ id, name, retired }) => ({
      value: id,
      words: retired ? `${name} (no longer used)` : name,
    })),
  ];
}
