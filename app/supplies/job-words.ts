import type { WrapJob } from "#lib/packing/substitution/substitution-rule";

/** What a material does for a piece, in the words of the bench. */
export const JOB_WORDS: Readonly<Record<WrapJob, string>> = {
  surface: "next to the surface",
  shock: "takes the shock",
  brace: "braces and binds outside",
  bind: "holds a wrap closed",
  fill: "fills hollows and the carton",
  seal: "seals the carton",
};
