import type { ComponentProps } from "react";
import { Page } from "./page";
import { RecordForm } from "./record-form";

type FormPageProps = Pick<ComponentProps<typeof Page>, "finding" | "aside"> &
  Pick<ComponentProps<typeof RecordForm>, "action" | "label" | "fields" | "submit">;

/** A narrow page that is one form. */
export function FormPage({ finding, aside, ...form }: FormPageProps) {
  return (
    <Page width="narrow" finding={finding} aside={aside}>
      <RecordForm {...form} tone="primary" />
    </Page>
  );
}
