import { type RefObject, useEffect, useRef, useState } from "react";
import { typedValues } from "../../_parts/form-state";

const PAUSE_MS = 500;

type Typed = Readonly<Record<string, string>>;

/**
 * What stands in a form, a short pause after the last key. What was typed before scripts ran is read at once.
 *
 * @param form the form
 * @param first what it shows at first
 * @param attempt which sending it answers: after each the fields are read anew
 * @returns the texts by field, empty ones missing, and what to call on each key
 */
export function useTypedAfterPause(
  form: RefObject<HTMLFormElement | null>,
  first: Typed,
  attempt: number,
): { readonly typed: Typed; readonly note: () => void } {
  const [typed, setTyped] = useState(first);
  const timer = useRef<number | undefined>(undefined);
  const read = useRef(() => {
    if (form.current !== null) setTyped(typedValues(new FormData(form.current)));
  });

  // biome-ignore lint/correctness/useExhaustiveDependencies: the fields are new after each sending
  useEffect(() => {
    read.current();
    return () => window.clearTimeout(timer.current);
  }, [attempt]);

  const note = () => {
    window.clearTimeout(timer.current);
    timer.current = window.setTimeout(read.current, PAUSE_MS);
  };
  return { typed, note };
}
