import { Button } from "../../../../_parts/button";
import { cancelRun } from "../../actions";

/** Lets the file go. */
export function CancelForm({ runId }: { readonly runId: string }) {
  return (
    <form action={cancelRun.bind(null, runId)} aria-label="Cancel the import">
      <Button type="submit" tone="plain">
        Cancel this import
      </Button>
    </form>
  );
}
