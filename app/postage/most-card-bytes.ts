/** A file of cards is far smaller; a form may send about as much. */
export const MOST_CARD_BYTES = 900_000;
