import { blockVolume } from "#lib/packing/block";
import { cartonOutside } from "#lib/packing/carton-outside";
import { boxInBox } from "#lib/packing/fill/box-in-box";
import type { CartonRoom } from "#lib/packing/fill/carton-room";
import { askedCushion } from "#lib/packing/piece/asked-cushion";
import { type PieceProblem, pieceProblems } from "#lib/packing/piece/piece-problems";
import type { SupplyJob } from "#lib/packing/recipe/chosen-supplies";
import { dividerStep } from "#lib/packing/recipe/divider-step";
import type { DraftCarton, DraftRequest } from "#lib/packing/recipe/draft-request";
import { type DraftedMass, draftedMass } from "#lib/packing/recipe/drafted-mass";
import type { DraftedStep, UnplacedStep } from "#lib/packing/recipe/drafted-step";
import { fillSteps } from "#lib/packing/recipe/fill-steps";
import { pieceSteps } from "#lib/packing/recipe/piece-steps";
import { sealStep } from "#lib/packing/recipe/seal-step";
import { type UnsuitedSupply, unsuitedSupply } from "#lib/packing/recipe/unsuited-supply";
import type { RecipeCarton } from "#lib/packing/recipe-version";
import { type SetRoom, setRoom } from "#lib/packing/set/set-room";
import { amountOfUnits } from "#lib/units/amount";

/** Below, beside and above. */
const PLACES_OF_FILL = 3;

/** A recipe as geometry and habits would have it, ready to be saved and corrected. An estimate, not a promise. */
export type DraftedRecipe = {
  readonly kind: "drafted";
  readonly steps: readonly DraftedStep[];
  readonly cartons: readonly RecipeCarton[];
  readonly mass: DraftedMass;
  readonly room: CartonRoom;
  /** jobs that the piece asks for and that no supply was chosen for */
  readonly leftOut: readonly SupplyJob[];
};

/** Why no recipe could be drafted: the description, a supply, or a carton (with what it leaves). */
export type DraftRefusal =
  | { readonly kind: "piece-problems"; readonly problems: readonly PieceProblem[] }
  | ({ readonly kind: "unsuited-supply" } & UnsuitedSupply)
  | {
      readonly kind: "too-tight" | "does-not-fit";
      readonly cartonId: string;
      readonly around: "pieces" | "carton";
      readonly room: CartonRoom;
    };

/**
 * A first recipe for an item type, from its sizes: the steps in packing order with amounts in natural units, the
 * carton, and what the parcel should weigh. Wraps go by the piece; dividers, fill and tape by the parcel, for as many
 * pieces as were asked for. In a double box the inner carton is a step, and the gap round it is filled.
 *
 * @param request - piece, whole pieces from 1, habits, supplies by job, carton, outer carton or null, measures
 * @returns the recipe; or why there is none: problems of the description, a supply that cannot do its job, a carton
 *   that is too small or leaves less than the habits ask for
 * @throws RangeError if the pieces are not a whole number from 1, or a habit or carton is no length
 * @see the formulas of the parts; overlaps, layers and cushions are common practice, no source
 * @example draftedRecipe({ piece: mug, pieces: 1, habits: USUAL_HABITS, supplies: chosenSupplies("mixed", shelf),
 *   carton: cube10, outer: null, measures: "imperial" })
 */
export function draftedRecipe(request: DraftRequest): DraftedRecipe | DraftRefusal {
  const { piece, pieces, habits, supplies, carton, outer, measures } = request;
  const problems = pieceProblems(piece);
  if (problems.length > 0) return { kind: "piece-problems", problems };
  const unsuited = unsuitedSupply(supplies, habits);
  if (unsuited !== null) return { kind: "unsuited-supply", ...unsuited };

  const cushionUm = askedCushion(piece, habits);
  const wrapped = pieceSteps(request);
  const wallUm =
    supplies.divide === null || supplies.divide.form.kind === "loose" ? 0 : supplies.divide.form.thickUm;
  const { block, apart } = wrapped;
  const set = setRoom(
    carton.inside,
    { block, apart, pieces, wallUm, thisSideUp: piece.thisSideUp },
    cushionUm,
  );
  if (set.room.kind !== "fits") {
    return { kind: set.room.kind, cartonId: carton.supplyId, around: "pieces", room: set.room };
  }
  const nested = outer && nestedSteps(request, outer);
  if (nested && nested.kind !== "nested") return nested;

  const packed = [
    ...wrapped.steps,
    ...loadSteps(request, set, cushionUm),
    ...(supplies.seal
      ? [sealStep(carton, outer ? "the inner carton" : "the carton", supplies.seal, habits, measures)]
      : []),
    ...(nested?.steps ?? []),
  ];
  const steps = packed.map(
    (step, index): DraftedStep => ({ ...step, id: `draft-${index + 1}`, position: index + 1 }),
  );
  const outermost = outer ?? carton;
  return {
    kind: "drafted",
    steps,
    cartons: [{ upTo: pieces, supplyId: outermost.supplyId }],
    mass: draftedMass(request, steps),
    room: set.room,
    leftOut: leftOut(request),
  };
}

/** Dividers and fill, once a parcel. */
function loadSteps(
  { supplies, habits, measures, carton, pieces }: DraftRequest,
  { room, grid, loadMl }: SetRoom,
  baseUm: number,
): readonly UnplacedStep[] {
  const divider = supplies.divide && pieces > 1 ? dividerStep(room.turned, grid, supplies.divide) : null;
  const name = pieces === 1 ? "the piece" : "the pieces";
  const load = { block: room.turned, ml: loadMl, baseUm, name };
  const fill = supplies.fill ? fillSteps(carton.inside, load, supplies.fill, habits, measures) : [];
  return [...(divider ? [divider] : []), ...fill];
}

/** The inner carton in the outer one: the base, the carton itself, the rest of the fill in the gap, the outer tape. */
function nestedSteps(
  { piece, carton, habits, supplies, measures }: DraftRequest,
  outer: DraftCarton,
): { readonly kind: "nested"; readonly steps: readonly UnplacedStep[] } | DraftRefusal {
  const asked = { gapUm: habits.boxGapUm, thisSideUp: piece.thisSideUp };
  const room = boxInBox(carton, outer.inside, asked);
  if (room.kind !== "fits") return { kind: room.kind, cartonId: outer.supplyId, around: "carton", room };
  const ml = blockVolume(cartonOutside(carton.inside, carton.boardUm));
  const load = { block: room.turned, ml, baseUm: habits.boxGapUm, name: "the inner carton" };
  const fill = supplies.fill ? fillSteps(outer.inside, load, supplies.fill, habits, measures) : [];
  // Fill that goes below, beside and above: the carton is stood on the first of the three.
  const below = fill.length === PLACES_OF_FILL ? 1 : 0;
  const steps = [
    ...fill.slice(0, below),
    innerCarton(carton),
    ...fill.slice(below),
    ...(supplies.seal ? [sealStep(outer, "the outer carton", supplies.seal, habits, measures)] : []),
  ];
  return { kind: "nested", steps };
}

function innerCarton(carton: DraftCarton): UnplacedStep {
  return {
    job: "box",
    words: "Stand the inner carton in the middle of the outer one",
    supplyId: carton.supplyId,
    amount: amountOfUnits(1),
    typedValue: "1",
    typedUnit: "",
    per: "parcel",
    theory: "1",
    used: "1",
    reason: "One inner carton a parcel.",
    guessed: false,
  };
}

function leftOut({ piece, pieces, supplies }: DraftRequest): readonly SupplyJob[] {
  const hollow: readonly SupplyJob[] = piece.hollows.length > 0 ? ["hollow"] : [];
  const guarded = piece.stickingOut.length > 0 || piece.rims > 0 || piece.body.kind === "stemmed";
  const guard: readonly SupplyJob[] = guarded ? ["guard"] : [];
  const set: readonly SupplyJob[] = pieces > 1 ? ["divide"] : [];
  const jobs: readonly SupplyJob[] = [
    ...hollow,
    ...guard,
    "surface",
    "cushion",
    "bind",
    ...set,
    "fill",
    "seal",
  ];
  return jobs.filter((job) => supplies[job] === null);
}
