import { type Block, blockAround } from "#lib/packing/block";
import type { DraftSupply } from "#lib/packing/draft-supply";
import type { PieceBody } from "#lib/packing/piece/piece";
import { guardedBlock } from "#lib/packing/piece/piece-block";
import { bindStep } from "#lib/packing/recipe/bind-step";
import type { DraftRequest } from "#lib/packing/recipe/draft-request";
import { MATERIAL_WORDS, type UnplacedStep } from "#lib/packing/recipe/drafted-step";
import { guardSteps } from "#lib/packing/recipe/guard-steps";
import { hollowStep } from "#lib/packing/recipe/hollow-step";
import { hollowSupply } from "#lib/packing/recipe/hollow-supply";
import { wrapStep } from "#lib/packing/recipe/wrap-step";

/** A piece ready for the carton: its steps, the block around it, and the block of its lid, null without. */
type WrappedPiece = {
  readonly steps: readonly UnplacedStep[];
  readonly block: Block;
  readonly apart: Block | null;
};

type WrapJob = "surface" | "cushion" | "outer";

/**
 * The steps that wrap one piece, in packing order: hollows, guards, tissue, cushion, outer wrap, what binds them; then
 * the lid by itself in tissue and cushion. Each wrap goes round what is wrapped already, and a job without a supply is
 * left out.
 *
 * @param request - piece, habits, supplies, measures
 * @returns steps taken for each piece, and the blocks that the carton must hold
 * @throws RangeError if a supply cannot do its job
 * @example pieceSteps(mugOnBubble).steps.map(({ job }) => job) // hollow, guard, surface, cushion, bind
 */
export function pieceSteps(
  request: Pick<DraftRequest, "piece" | "habits" | "supplies" | "measures">,
): WrappedPiece {
  const { piece, habits, supplies, measures } = request;
  const soft = hollowSupply(piece, supplies, habits);
  const hollow = soft && hollowStep(piece, soft, habits, measures);
  const guards = supplies.guard
    ? guardSteps(piece, supplies.guard, habits, measures)
    : { steps: [], guards: 0 };
  const guardUm = supplies.guard ? habits.guardLayers * thickness(supplies.guard) : 0;
  const body = wraps(
    request,
    piece.body.kind,
    guardedBlock(piece, guardUm),
    ["surface", "cushion", "outer"],
    "",
  );
  const lid =
    piece.lid === null
      ? null
      : wraps(request, "cylinder", lidBlock(piece.lid), ["surface", "cushion"], " the lid by itself");
  const bound = { wraps: body.bound + (lid?.bound ?? 0), guards: guards.guards };
  const bind = supplies.bind && bindStep(bound, supplies.bind, habits, measures);
  return {
    steps: [
      ...(hollow ? [hollow] : []),
      ...guards.steps,
      ...body.steps,
      ...(lid?.steps ?? []),
      ...(bind ? [bind] : []),
    ],
    block: body.block,
    apart: lid?.block ?? null,
  };
}

/** Wraps one round the other; `bound` counts those that are taped: tissue holds by itself. */
function wraps(
  { habits, supplies, measures }: Pick<DraftRequest, "habits" | "supplies" | "measures">,
  shape: PieceBody["kind"],
  bare: Block,
  jobs: readonly WrapJob[],
  what: string,
): { readonly steps: readonly UnplacedStep[]; readonly block: Block; readonly bound: number } {
  return jobs.reduce(
    (done, job) => {
      const supply = supplies[job];
      const layers = supply === null ? 0 : layersOf(job, supply, habits);
      if (supply === null || layers === 0) return done;
      const words = `Wrap${what} in ${MATERIAL_WORDS[supply.material]}`;
      const step = wrapStep({ job, words, supply, layers, shape, block: done.block }, habits, measures);
      const block = blockAround(done.block, layers * thickness(supply));
      return { steps: [...done.steps, step], block, bound: done.bound + (job === "surface" ? 0 : 1) };
    },
    { steps: [] as readonly UnplacedStep[], block: bare, bound: 0 },
  );
}

function layersOf(job: WrapJob, supply: DraftSupply, habits: DraftRequest["habits"]): number {
  return job === "outer" ? habits.outerLayers : (habits.layers[supply.material] ?? 1);
}

function thickness(supply: DraftSupply): number {
  return supply.form.kind === "loose" ? 0 : supply.form.thickUm;
}

function lidBlock(lid: { readonly acrossUm: number; readonly heightUm: number }): Block {
  return { lengthUm: lid.acrossUm, widthUm: lid.acrossUm, heightUm: lid.heightUm };
}
