/** How a carton is cut down: slit at the four corners, scored anew, folded, flaps trimmed. */
export type CutTerms = {
  /** minutes that it takes, above zero */
  readonly minutes: number;
  /** heights are rounded up to whole steps of this, whole micrometres above zero */
  readonly stepUm: number;
};

/** Three to six minutes, from memory, so a guess; half a centimetre is what a knife and a ruler keep to, no source. */
export const USUAL_CUT: CutTerms = { minutes: 5, stepUm: 5_000 };
