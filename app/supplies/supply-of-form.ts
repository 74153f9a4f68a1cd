import type { z } from "zod";
import type { Supply } from "#prisma/records/supplies";
import type { supplyForm } from "./supply-form";

const NANOMETRES_PER_MICROMETRE = 1_000;

/**
 * The supply that a filled form stands for. Figures that its kind has no use for are left out, and what a person
 * filled in is no guess any more.
 *
 * @param read the form as read
 * @param kept what the form does not ask: the id, the place on the shelf
 * @returns the supply to save
 */
export function supplyOfForm(
  read: z.output<ReturnType<typeof supplyForm>>,
  kept: Pick<Supply, "id" | "position">,
): Supply {
  const isCarton = read.kind === "carton";
  const isRolled =
    read.kind === "bubble" || read.kind === "tape" || read.kind === "paper" || read.kind === "other";
  const isPiled = read.kind === "tissue" || read.kind === "paper" || read.kind === "other";
  const [length, width, height] = read.sizes?.um ?? [];
  return {
    id: kept.id,
    position: kept.position,
    name: read.name,
    kind: read.kind,
    useUnit: read.useUnit,
    countUnit: read.countUnit ?? null,
    countAmount: read.countAmount?.amount ?? null,
    massMg: read.mass?.mg ?? null,
    massTyped: read.mass?.typed ?? null,
    lengthUm: length ?? null,
    widthUm: width ?? null,
    heightUm: height ?? null,
    sizesTyped: read.sizes?.typed ?? null,
    coreUm: isRolled ? (read.core?.um ?? null) : null,
    fullUm: isRolled ? (read.full?.um ?? null) : null,
    fullAmount: isRolled ? (read.fullAmount?.amount ?? null) : null,
    coreMassMg: isRolled ? (read.coreMass?.mg ?? null) : null,
    sheetNm: isPiled ? sheetNm(read.pileHeight?.um, read.pileSheets) : null,
    wall: isCarton ? (read.wall ?? "single") : null,
    rating: isCarton ? (read.rating ?? null) : null,
    ratedMassMg: isCarton ? (read.ratedMass?.mg ?? null) : null,
    guessed: false,
    note: read.note,
    retired: read.retired,
  };
}

/** Thickness of one sheet from a pile of known number. */
function sheetNm(heightUm: number | undefined, sheets: number | undefined): number | null {
  if (heightUm === undefined || sheets === undefined) return null;
  return Math.round((heightUm * NANOMETRES_PER_MICROMETRE) / sheets);
}
