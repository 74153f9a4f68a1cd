import type { z } from "zod";
import { PLAIN_SUPPLY } from "#prisma/records/plain-supply";
import type { Supply } from "#prisma/records/supplies";
import type { supplyForm } from "./supply-form";

const NANOMETRES_PER_MICROMETRE = 1_000;
const ROLLED: readonly Supply["kind"][] = ["bubble", "tape", "paper", "other"];
const LAYERED: readonly Supply["kind"][] = ["bubble", "paper", "other"];
const PILED: readonly Supply["kind"][] = ["tissue", "paper", "other"];

type ReadSupply = z.output<ReturnType<typeof supplyForm>>;

/**
 * The supply that a filled form stands for. Figures that its kind has no use for are left out, and what a person
 * filled in is no guess any more.
 *
 * @param read the form as read
 * @param kept what the form does not ask: the id, the place on the shelf, whether it is used up first
 * @returns the supply to save
 */
export function supplyOfForm(read: ReadSupply, kept: Pick<Supply, "id" | "position" | "useFirst">): Supply {
  return {
    ...PLAIN_SUPPLY,
    ...kept,
    name: read.name,
    kind: read.kind,
    useUnit: read.useUnit,
    ...madeOf(read),
    countUnit: read.countUnit ?? null,
    countAmount: read.countAmount?.amount ?? null,
    massMg: read.mass?.mg ?? null,
    massTyped: read.mass?.typed ?? null,
    ...sizesOf(read),
    ...(ROLLED.includes(read.kind) ? rollOf(read) : {}),
    ...(PILED.includes(read.kind) ? { sheetNm: sheetNm(read.pileHeight?.um, read.pileSheets) } : {}),
    ...(read.kind === "carton" ? cartonOf(read) : {}),
    goal: read.promise?.goal ?? null,
    goalPerMille: read.promise?.perMille ?? null,
    shelfLifeDays: read.shelfLife ?? null,
    lastUseOn: read.lastUseOn ?? null,
    note: read.note,
    retired: read.retired,
  };
}

function madeOf({ kind, material, layer }: ReadSupply) {
  return {
    material: kind === "carton" ? null : (material ?? null),
    ...(LAYERED.includes(kind) ? { layerUm: layer?.um ?? null, layerTyped: layer?.typed ?? null } : {}),
  };
}

function sizesOf({ sizes }: ReadSupply) {
  const [lengthUm = null, widthUm = null, heightUm = null] = sizes?.um ?? [];
  return { lengthUm, widthUm, heightUm, sizesTyped: sizes?.typed ?? null };
}

function rollOf(read: ReadSupply) {
  return {
    coreUm: read.core?.um ?? null,
    fullUm: read.full?.um ?? null,
    fullAmount: read.fullAmount?.amount ?? null,
    coreMassMg: read.coreMass?.mg ?? null,
  };
}

function cartonOf(read: ReadSupply) {
  return {
    wall: read.wall ?? "single",
    rating: read.rating ?? null,
    ratedMassMg: read.ratedMass?.mg ?? null,
    flutes: read.flutes ?? null,
    ...outsideOf(read),
    boardUsed: read.board === "reused",
  };
}

function outsideOf({ outside }: ReadSupply) {
  const [outsideLengthUm = null, outsideWidthUm = null, outsideHeightUm = null] = outside?.um ?? [];
  return { outsideLengthUm, outsideWidthUm, outsideHeightUm, outsideTyped: outside?.typed ?? null };
}

/** Thickness of one sheet from a pile of known number. */
function sheetNm(heightUm: number | undefined, sheets: number | undefined): number | null {
  if (heightUm === undefined || sheets === undefined) return null;
  return Math.round((heightUm * NANOMETRES_PER_MICROMETRE) / sheets);
}
