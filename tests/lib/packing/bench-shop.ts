import type { DraftSupply } from "#lib/packing/draft-supply";
import type { Piece } from "#lib/packing/piece/piece";
import type { ChosenSupplies } from "#lib/packing/recipe/chosen-supplies";
import type { DraftCarton } from "#lib/packing/recipe/draft-request";
import { MICROMETRES_PER_INCH } from "#lib/units/length";

/** An invented bench: sizes and masses as they are common in the trade, from memory. */
export const inches = (count: number): number => Math.round(count * MICROMETRES_PER_INCH);

const supply = (change: Partial<DraftSupply> & Pick<DraftSupply, "supplyId" | "material">): DraftSupply => ({
  name: change.supplyId,
  useUnit: "sheet",
  massMg: null,
  form: { kind: "sheet", lengthUm: inches(36), widthUm: inches(24), thickUm: 76 },
  bulkUm: null,
  measured: false,
  ...change,
});

export const tissue = supply({
  supplyId: "tissue",
  material: "tissue",
  massMg: 6580,
  form: { kind: "sheet", lengthUm: inches(30), widthUm: inches(20), thickUm: 30 },
});
export const paper = supply({ supplyId: "paper", material: "packing-paper", massMg: 27_216 });
export const smallBubble = supply({
  supplyId: "small-bubble",
  material: "small-bubble",
  useUnit: "piece",
  massMg: 4645,
  form: { kind: "roll", widthUm: inches(12), pieceUm: inches(12), thickUm: 4762.5 },
});
export const largeBubble = supply({
  supplyId: "large-bubble",
  material: "large-bubble",
  useUnit: "square-foot",
  massMg: 7897,
  form: { kind: "roll", widthUm: inches(24), pieceUm: inches(12), thickUm: 12_700 },
});
export const looseFill = supply({
  supplyId: "loose-fill",
  material: "loose-fill",
  useUnit: "each",
  massMg: 1_200_000,
  form: { kind: "loose", mlPerUnit: 396_436 },
});
export const card = supply({
  supplyId: "card",
  material: "card",
  massMg: 300_000,
  form: { kind: "sheet", lengthUm: inches(36), widthUm: inches(24), thickUm: 3000 },
});
export const kraft = supply({
  supplyId: "kraft",
  material: "kraft",
  massMg: 27_100,
  form: { kind: "sheet", lengthUm: inches(30), widthUm: inches(20), thickUm: 100 },
});
export const householdTape = supply({
  supplyId: "household-tape",
  material: "household-tape",
  useUnit: "strip",
  massMg: 100,
  form: { kind: "roll", widthUm: inches(0.75), pieceUm: null, thickUm: 50 },
});
export const cartonTape = supply({
  supplyId: "carton-tape",
  material: "carton-tape",
  useUnit: "foot",
  massMg: 701,
  form: { kind: "roll", widthUm: 48_000, pieceUm: null, thickUm: 51 },
});

export const NO_SUPPLIES: ChosenSupplies = {
  hollow: null,
  guard: null,
  surface: null,
  cushion: null,
  outer: null,
  bind: null,
  divide: null,
  fill: null,
  seal: null,
};

export const cartonOf = (length: number, width: number, height: number): DraftCarton => ({
  supplyId: `carton-${length}-${width}-${height}`,
  inside: { lengthUm: inches(length), widthUm: inches(width), heightUm: inches(height) },
  boardUm: 0,
  massMg: null,
});

/** A mug 4.5 in across its bowl and 4 in high, with a handle. */
export const mug: Piece = {
  itemTypeId: "mug",
  body: { kind: "cylinder", acrossUm: inches(3.25), heightUm: inches(4) },
  hollows: [{ kind: "round", acrossUm: inches(3), deepUm: inches(3.75) }],
  stickingOut: [{ part: "handle", where: "right", outUm: inches(1.25), alongUm: inches(3) }],
  rims: 0,
  lid: null,
  thisSideUp: false,
  frailty: "usual",
  massMg: 370_000,
  typed: {},
};
