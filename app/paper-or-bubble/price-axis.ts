import { priceEnvelope } from "#lib/cushioning/price-envelope";
import type { CushionStyle } from "#lib/packing/recipe-version";
import type { KindAnswer } from "./cushion-answer";

/** A stretch of a strip, percent of its width, over which a style is the cheapest. */
export type StripPart = { readonly style: CushionStyle; readonly from: number; readonly to: number };

/** A kind of parcel on the shared axis of prices. */
export type PriceStrip = {
  readonly kind: KindAnswer;
  readonly parts: readonly StripPart[];
  /** the prices at which the choice turns, 1/10,000 minor unit; none where one way wins at every price */
  readonly turns: readonly {
    readonly price: number;
    readonly from: CushionStyle;
    readonly to: CushionStyle;
  }[];
};

/** Strips of all kinds on one axis that begins at 0. */
export type PriceAxis = {
  /** 1/10,000 minor unit at the right end */
  readonly top: number;
  /** percent of the width at which today's price stands */
  readonly nowPercent: number;
  readonly ticks: readonly { readonly price: number; readonly percent: number }[];
  readonly strips: readonly PriceStrip[];
};

const ROOM_BEYOND = 1.25;
/** The axis reaches no further than so many times today's price: a turn beyond it stands in the table. */
const FARTHEST_TIMES = 3;
const TICKS = 4;

/**
 * At which price of a supply each kind of parcel turns, on one axis.
 *
 * @param kinds with at least two ways each
 * @param supplyId the supply whose price moves
 * @param priceNow 1/10,000 minor unit a use unit, above 0
 * @returns the strips, those that turn at the highest price first
 */
export function priceAxis(kinds: readonly KindAnswer[], supplyId: string, priceNow: number): PriceAxis {
  const found = kinds.map((kind) => ({ kind, spans: priceEnvelope(kind.costs, supplyId, priceNow) }));
  const ends = found.flatMap(({ spans }) => spans.map(({ to }) => to).filter(Number.isFinite));
  const farthest = Math.min(Math.max(priceNow, ...ends), FARTHEST_TIMES * priceNow);
  const { top, step } = niceAxis(farthest * ROOM_BEYOND);
  const percent = (price: number) => (Math.min(price, top) / top) * 100;
  return {
    top,
    nowPercent: percent(priceNow),
    ticks: Array.from({ length: Math.floor(top / step) + 1 }, (_, at) => ({
      price: at * step,
      percent: percent(at * step),
    })),
    strips: found
      .map(({ kind, spans }) => ({
        kind,
        parts: spans
          .filter(({ from }) => from < top)
          .map(({ style, from, to }) => ({ style, from: percent(from), to: percent(to) })),
        turns: spans.slice(1).map(({ from, style }, at) => ({
          price: from,
          from: spans[at]?.style ?? style,
          to: style,
        })),
      }))
      .toSorted((a, b) => lastTurn(b.turns) - lastTurn(a.turns)),
  };
}

function lastTurn(turns: PriceStrip["turns"]): number {
  return turns.at(-1)?.price ?? 0;
}

/** Steps of 1, 2 or 5 times a power of ten, four or a few more to the top. */
function niceAxis(least: number): { readonly top: number; readonly step: number } {
  const raw = least / TICKS;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((times) => times * power >= raw) ?? 10) * power;
  return { top: Math.ceil(least / step) * step, step };
}
