import { expect } from "vitest";
import { boardCaliper, flutesOf } from "#lib/cartons/board/board-caliper";
import { boardPounds, facingPounds } from "#lib/cartons/board/board-weight";
import { chargedSize, packedOutside } from "#lib/cartons/board/charged-size";
import { CERTIFICATE_ROWS } from "#lib/cartons/strength/certificate-rows";
import { cartonBlank } from "#lib/packing/carton-blank";
import { cartonMass } from "#lib/packing/carton-mass";
import { type DimensionalRule, dimensionalWeight } from "#lib/postage/dimensional-weight";
import { ratio, ratioNumber } from "#lib/postage/ratio";
import { MICROMETRES_PER_FOOT, MICROMETRES_PER_INCH } from "#lib/units/length";
import { MILLIGRAMS_PER_POUND } from "#lib/units/mass";
import { checkPublishedCases, type GivenCase, readCases } from "./published-cases";

const CASES = readCases<"cartonGeometry">("carton-cases.json").cartonGeometry;

const inInches = (um: number) => um / MICROMETRES_PER_INCH;

function insideOf(given: GivenCase) {
  const [lengthUm, widthUm, heightUm] = given
    .numbers("insideIn")
    .map((inches) => inches * MICROMETRES_PER_INCH);
  if (!lengthUm || !widthUm || !heightUm) throw new RangeError(`insideOf requires sizes, got ${given.id}`);
  return { lengthUm, widthUm, heightUm };
}

const skinOf = (given: GivenCase) => ({
  boardUm: given.number("caliperIn") * MICROMETRES_PER_INCH,
  bulgeUm: 0,
});

/** A post's rule from 12 July 2026 (trade news: https://thelogisticnews.com/?p=18371). */
const RULE: DimensionalRule = {
  divisor: ratio(139n),
  lengthUnit: "in",
  massUnit: "lb",
  floor: ratio(1728n),
  sides: { kind: "up", to: ratio(1n) },
  result: { kind: "up", to: ratio(1n) },
  shapeFactor: null,
  atMost: null,
  zones: null,
};

checkPublishedCases("the geometry of slotted cartons", CASES, [
  [
    /^outside-from-inside-/,
    (given) => {
      const { lengthUm, widthUm, heightUm } = packedOutside(insideOf(given), skinOf(given));
      given.meets("outsideLengthIn", inInches(lengthUm));
      given.meets("outsideWidthIn", inInches(widthUm));
      given.meets("outsideHeightIn", inInches(heightUm));
    },
  ],
  [
    /^nominal-12cube-billed$/,
    (given) => {
      const { sides, volume, weight } = dimensionalWeight(chargedSize(insideOf(given), skinOf(given)), RULE);
      given.meets("roundedIn", sides.map(ratioNumber));
      given.meets("volumeIn3", ratioNumber(volume));
      given.meets("dimWeightApplies", weight !== null);
      given.meets("dimWeightLb", weight === null ? null : ratioNumber(weight));
    },
  ],
  [
    // A board of 42 + 42 lb and 26 lb of medium; glue left out, the take-up from memory.
    /^carton-weight-12cube$/,
    (given) => {
      const board = boardPounds({ liners: [42, 42], mediums: [{ pounds: 26, flute: "C" }] });
      expect(board).toBeCloseTo(given.number("boardLbPerMsf"), 1);
      const cube = { lengthUm: 304_800, widthUm: 304_800, heightUm: 304_800 };
      given.meets("weightLb", cartonMass(cube, board / 1000) / MILLIGRAMS_PER_POUND);
    },
  ],
  [
    /^blank-area-/,
    (given) => {
      const inside = insideOf(given);
      const height = inInches(inside.widthUm + inside.heightUm);
      given.meets("blankIn", [cartonBlank(inside) / MICROMETRES_PER_INCH ** 2 / height, height]);
      given.meets("areaFt2", cartonBlank(inside) / MICROMETRES_PER_FOOT ** 2);
    },
  ],
  [
    /^facings-200psi$/,
    (given) => {
      const sum = facingPounds(given.numbers("linersLbPerMsf"));
      given.meets("sumLbPerMsf", sum);
      const row = CERTIFICATE_ROWS.find((each) => each.wall === "single" && each.burstPsi === 200);
      expect(row?.facingPounds).toBe(sum);
    },
  ],
  [
    /^caliper-/,
    (given) => {
      const flutes = flutesOf(given.text("flute")) ?? [];
      given.meets("approxCaliperIn", inInches(boardCaliper(flutes).um));
      given.notReckoned("flutesPerFt");
    },
  ],
]);
