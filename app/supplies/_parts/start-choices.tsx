import { ButtonLink } from "../../_parts/button-link";

/** What an empty shelf begins with: the recipes bring their supplies along, or one is added by hand. */
export function StartChoices() {
  return (
    <>
      <ButtonLink href="/recipes/start" tone="primary">
        Copy starter recipes
      </ButtonLink>
      <ButtonLink href="/supplies/new">Add a supply</ButtonLink>
    </>
  );
}
