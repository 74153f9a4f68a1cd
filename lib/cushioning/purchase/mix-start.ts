import { costedMix } from "#lib/cushioning/purchase/costed-mix";
import type { MixChoice, SplitPart } from "#lib/cushioning/purchase/mix-choice";
import {
  belowColumn,
  beyondColumn,
  leftColumn,
  type MixModel,
  parcelsColumn,
  unpackedColumn,
} from "#lib/cushioning/purchase/mix-model";
import type { MixType } from "#lib/cushioning/purchase/mix-question";
import { choiceOfValues, planStart } from "#lib/purchasing/plan/plan-start";

/**
 * A mix as values of the model's columns, for the solver to begin with.
 *
 * @param model the model
 * @param choice a sound mix for its question
 * @returns a value for every column
 */
export function mixStart(model: MixModel, choice: MixChoice): Record<string, number> {
  const lines = choice.lines.map((line) => ({ ...line, week: 0 }));
  const orders = planStart(model, { lines, standIns: [] });
  const { stock, unpacked } = costedMix(model.mix, choice);
  const values = new Map(Object.entries(orders));
  const set = (name: string, value: number) => {
    if (values.has(name)) values.set(name, value);
  };
  model.mix.types.forEach(({ id, ways }, type) => {
    ways.forEach(({ style }, way) => {
      const part = choice.split.find((each) => each.typeId === id && each.style === style);
      set(parcelsColumn(type, way), part?.parcels ?? 0);
    });
    set(unpackedColumn(type), unpacked.find(({ typeId }) => typeId === id)?.parcels ?? 0);
  });
  model.supplies.forEach(({ index, scale, supply }) => {
    const left = Math.max(0, stock[index]?.left ?? 0);
    const worth = Math.min(left, model.mix.supplies[index]?.worthUpTo ?? left);
    set(leftColumn(index), worth / scale);
    set(beyondColumn(index), (left - worth) / scale);
    set(belowColumn(index), Math.max(0, (supply.wanted[0] ?? 0) - left) / scale);
  });
  return Object.fromEntries(values);
}

/**
 * The mix that a solver's values mean: packs rounded to whole ones, parcels cleared of the solver's dust and brought to
 * the sum that the type has.
 *
 * @param model the model
 * @param values a value for every column
 * @returns packs by offer, parcels by type and style
 */
export function choiceOfMixValues(model: MixModel, values: Readonly<Record<string, number>>): MixChoice {
  const { lines } = choiceOfValues(model, values);
  return {
    lines: lines.map(({ offerId, packs }) => ({ offerId, packs })),
    split: model.mix.types.flatMap((type, index) => splitOf(type, index, values)),
  };
}

/** Share of a type's parcels that is dust. */
const DUST = 1e-7;

function splitOf(
  { id, parcels, ways }: MixType,
  type: number,
  values: Readonly<Record<string, number>>,
): SplitPart[] {
  const cleared = (value = 0) => (value > DUST * Math.max(1, parcels) ? value : 0);
  const open = Math.min(parcels, cleared(values[unpackedColumn(type)]));
  const parts = ways.map(({ style }, way) => ({ style, parcels: cleared(values[parcelsColumn(type, way)]) }));
  const sum = parts.reduce((total, part) => total + part.parcels, 0);
  if (sum === 0) return [];
  return parts
    .filter((part) => part.parcels > 0)
    .map((part) => ({ typeId: id, style: part.style, parcels: (part.parcels / sum) * (parcels - open) }));
}
