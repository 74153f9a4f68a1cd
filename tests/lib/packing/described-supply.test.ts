import { describe, expect, it } from "vitest";
import { describedSupply } from "#lib/packing/described-supply";
import { inches } from "./bench-shop";

const record = {
  id: "small-bubble",
  name: "Small bubble",
  kind: "bubble",
  material: null,
  useUnit: "piece",
  massMg: 4600,
  lengthUm: inches(12),
  widthUm: inches(12),
  heightUm: null,
  sheetNm: null,
  layerUm: null,
  bulkUm: null,
} as const;
type SupplyRecord = Parameters<typeof describedSupply>[0];
const read = (change: Partial<SupplyRecord>) => {
  const described = describedSupply({ ...record, ...change });
  return described.kind === "described" ? described.supply : described.missing;
};

describe("describedSupply", () => {
  it("reads a roll that tears, with the usual layer as a guess", () => {
    expect(read({})).toEqual({
      supplyId: "small-bubble",
      name: "Small bubble",
      material: "small-bubble",
      useUnit: "piece",
      massMg: 4600,
      form: { kind: "roll", widthUm: inches(12), pieceUm: inches(12), thickUm: 4762.5 },
      bulkUm: null,
      measured: false,
    });
  });

  it("takes a measured layer, which tells large bubble as well", () => {
    expect(read({ layerUm: 12_000 })).toMatchObject({
      material: "large-bubble",
      form: { thickUm: 12_000 },
      measured: true,
    });
  });

  it("believes what the shop says it is", () => {
    expect(read({ material: "foam" })).toMatchObject({ material: "foam", form: { thickUm: inches(1 / 8) } });
    expect(read({ material: "no such thing" })).toMatchObject({ material: "small-bubble" });
  });

  it("reads sheets, as thick as their pile says", () => {
    const sheets = { kind: "paper", useUnit: "sheet", lengthUm: inches(36), sheetNm: 76_200 } as const;
    expect(read(sheets)).toMatchObject({
      material: "packing-paper",
      form: { kind: "sheet", lengthUm: inches(36), widthUm: inches(12), thickUm: 76.2 },
    });
    expect(read({ ...sheets, kind: "tissue" })).toMatchObject({ material: "tissue" });
    expect(read({ ...sheets, widthUm: null })).toBe("sizes");
  });

  it("tells household tape from carton tape by its use or width, and needs no sizes of either", () => {
    const tape = { kind: "tape", useUnit: "foot", lengthUm: null, widthUm: null } as const;
    expect(read(tape)).toMatchObject({ material: "carton-tape", form: { kind: "roll", pieceUm: null } });
    expect(read({ ...tape, useUnit: "strip" })).toMatchObject({ material: "household-tape" });
    expect(read({ ...tape, widthUm: inches(0.75) })).toMatchObject({ material: "household-tape" });
  });

  it("takes the sides of a bag for what loose fill holds", () => {
    const fill = { kind: "fill", useUnit: "each", lengthUm: 1_000_000, widthUm: 500_000 } as const;
    expect(read({ ...fill, heightUm: 500_000 })).toMatchObject({
      form: { kind: "loose", mlPerUnit: 250_000 },
    });
    expect(read(fill)).toBe("sizes");
  });

  it("says what is missing: a width, or what it is made of", () => {
    expect(read({ widthUm: null })).toBe("sizes");
    expect(read({ kind: "other" })).toBe("material");
    expect(read({ kind: "carton" })).toBe("material");
  });

  it("counts bands by themselves", () => {
    const bands = { kind: "other", material: "rubber-band", useUnit: "each", widthUm: null } as const;
    expect(read(bands)).toMatchObject({ material: "rubber-band", form: { kind: "roll", pieceUm: null } });
  });
});
