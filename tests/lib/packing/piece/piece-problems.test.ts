import { describe, expect, it } from "vitest";
import type { Piece } from "#lib/packing/piece/piece";
import { pieceProblems } from "#lib/packing/piece/piece-problems";
import { inches, mug } from "../bench-shop";

const kinds = (change: Partial<Piece>) =>
  pieceProblems({ ...mug, ...change }).map(({ field, kind }) => `${field}: ${kind}`);
const part = (across: number, height: number) => ({ acrossUm: inches(across), heightUm: inches(height) });

describe("pieceProblems", () => {
  it("finds none in a mug", () => {
    expect(pieceProblems(mug)).toEqual([]);
  });

  it("names every measure that is zero, with what was typed", () => {
    const flatMug = {
      ...mug,
      body: { kind: "cylinder", acrossUm: 0, heightUm: Number.NaN } as const,
      typed: { "body.acrossUm": "0 in" },
    };
    const problems = pieceProblems(flatMug);
    expect(problems.map(({ field }) => field)).toEqual(["body.acrossUm", "body.heightUm"]);
    expect(problems[0]?.words).toContain('"0 in"');
  });

  it("looks at each shape's own measures", () => {
    expect(kinds({ body: { kind: "box", lengthUm: 1, widthUm: 0, heightUm: 1 }, hollows: [] })).toEqual([
      "body.widthUm: not-above-zero",
    ]);
    expect(kinds({ body: { kind: "flat", acrossUm: 1, longUm: 0, thickUm: 0 }, hollows: [] })).toEqual([
      "body.longUm: not-above-zero",
      "body.thickUm: not-above-zero",
    ]);
    const glass = { kind: "stemmed", bowl: part(3, 3), stem: part(0, 3), foot: part(3, 0.2) } as const;
    expect(kinds({ body: glass })).toEqual(["body.stem.acrossUm: not-above-zero"]);
  });

  it("looks at hollows, handles, lids and masses", () => {
    expect(kinds({ hollows: [{ kind: "volume", ml: 0 }] })).toEqual(["hollows.0.ml: not-above-zero"]);
    expect(kinds({ hollows: [{ kind: "share", share: -0.1 }] })).toEqual(["hollows.0.share: not-above-zero"]);
    const handle = { part: "handle", where: "left", outUm: 0, alongUm: 1 } as const;
    expect(kinds({ stickingOut: [handle] })).toEqual(["stickingOut.0.outUm: not-above-zero"]);
    expect(kinds({ lid: part(3, 0) })).toEqual(["lid.heightUm: not-above-zero"]);
    expect(kinds({ massMg: 0 })).toEqual(["massMg: not-above-zero"]);
  });

  it("finds a lid that is larger than its pot", () => {
    expect(kinds({ lid: part(3.25, 1) })).toEqual([]);
    expect(kinds({ lid: part(3.3, 1) })).toEqual(["lid.acrossUm: lid-too-wide"]);
  });

  it("finds hollows that hold more than the piece", () => {
    expect(kinds({ hollows: [{ kind: "share", share: 1.2 }] })).toEqual([
      "hollows.0.share: share-out-of-range",
    ]);
    expect(kinds({ hollows: [{ kind: "volume", ml: 5000 }] })).toEqual(["hollows: hollow-too-large"]);
  });

  it("finds a handle in the wrong unit, and a stem that is no stem", () => {
    const handle = { part: "handle", where: "left", outUm: inches(12.5), alongUm: inches(3) } as const;
    expect(kinds({ stickingOut: [handle] })).toEqual(["stickingOut.0.outUm: too-long"]);
    const jar = { kind: "stemmed", bowl: part(4, 4), stem: part(3, 3), foot: part(2, 1) } as const;
    expect(kinds({ body: jar })).toEqual(["body.stem.acrossUm: stem-too-wide"]);
  });

  it("finds a handle longer than the piece, but lets a pan have its long handle", () => {
    const handle = { part: "handle", where: "left", outUm: inches(1), alongUm: inches(10) } as const;
    expect(kinds({ stickingOut: [handle] })).toEqual(["stickingOut.0.alongUm: too-long"]);
    expect(kinds({ stickingOut: [{ ...handle, outUm: inches(7), alongUm: inches(1) }] })).toEqual([]);
    expect(kinds({ stickingOut: [{ ...handle, part: "other" }] })).toEqual([]);
  });

  it("says of every problem what to do, as a sentence", () => {
    const problems = pieceProblems({ ...mug, lid: part(9, 1), hollows: [{ kind: "volume", ml: 5000 }] });
    expect(problems).toHaveLength(2);
    expect(problems.filter(({ words }) => !/^[A-Z].*\.$/.test(words))).toEqual([]);
  });
});
