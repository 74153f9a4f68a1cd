import { CUSHION_STYLES } from "#lib/packing/recipe-version";
import { ChoiceField } from "../../_parts/choice-field";

type StyleChoiceFieldProps = { readonly defaultValue: string; readonly error: string | undefined };

/** On what it is packed; empty for the usual style. */
export function StyleChoiceField({ defaultValue, error }: StyleChoiceFieldProps) {
  return (
    <ChoiceField
      label="Packed on"
      name="style"
      size="short"
      choices={[
        { value: "", words: "as usual" },
        ...CUSHION_STYLES.map((style) => ({ value: style, words: style })),
      ]}
      defaultValue={defaultValue}
      error={error}
    />
  );
}
