import { RecordForm } from "../../_parts/record-form";
import { sayUseFirst } from "../actions";

type UseFirstProps = { readonly cartonId: string; readonly name: string; readonly isFirst: boolean };

/** One tap: Pack offers this size before others that would do, or as usual again. */
export function UseFirst({ cartonId, name, isFirst }: UseFirstProps) {
  return (
    <RecordForm
      action={sayUseFirst.bind(null, cartonId, !isFirst)}
      label={isFirst ? `Use ${name} as usual again` : `Use ${name} first`}
      fields={[]}
      submit={isFirst ? "Used first: stop" : "Use first"}
      tone={isFirst ? "secondary" : "plain"}
    />
  );
}
