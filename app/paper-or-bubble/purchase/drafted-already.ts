/** An order as far as it matters here. */
type Order = { readonly status: string; readonly lines: readonly { readonly offerId: string | null }[] };

/**
 * A warning where drafts hold packs that the plan buys too: a draft counts nowhere, so the plan buys them again.
 *
 * @param planned orders of the plan
 * @param orders drafts among them
 * @returns one sentence; null where no draft holds any of the packs
 */
export function draftedAlready(
  planned: readonly { readonly lines: readonly { readonly offerId: string }[] }[],
  orders: readonly Order[],
): string | null {
  const offers = new Set(planned.flatMap(({ lines }) => lines.map(({ offerId }) => offerId)));
  const drafts = orders.filter(
    ({ status, lines }) =>
      status === "draft" && lines.some(({ offerId }) => offerId !== null && offers.has(offerId)),
  ).length;
  if (drafts === 0) return null;
  const which = drafts === 1 ? "One draft at Buying holds" : `${drafts} drafts at Buying hold`;
  return `${which} some of these packs already. Drafts are not counted here: place or throw away those first, else the packs stand there twice.`;
}
