import { describe, expect, it } from "vitest";
import { pieceFields } from "#app/recipes/piece-fields.ts";
import { readPiece } from "#app/recipes/piece-form.ts";

const MUG = { id: "mug", massMg: 370_000 };
/** "Mug, 4.5 in across, 4 in high, handle, 370 g", as a seller fills it in. */
const TYPED = {
  form: "round",
  "round.acrossUm": "4.5",
  "round.heightUm": "4 in",
  hollow: "like-a-mug",
  "stickingOut.0.part": "handle",
  "stickingOut.0.where": "right",
  "stickingOut.0.outUm": "1 1/4",
  "stickingOut.1.where": "right",
  rims: "0",
  frailty: "usual",
};
const read = (change: Readonly<Record<string, string>> = {}) =>
  readPiece({ ...TYPED, ...change }, MUG, "imperial");
const problems = (change: Readonly<Record<string, string>>) => {
  const reading = read(change);
  return reading.kind === "refused" ? reading.problems : {};
};

describe("the description of a piece", () => {
  it("is read with what was typed kept beside it", () => {
    expect(read()).toEqual({
      kind: "piece",
      piece: {
        itemTypeId: "mug",
        massMg: 370_000,
        body: { kind: "cylinder", acrossUm: 114_300, heightUm: 101_600 },
        hollows: [{ kind: "share", share: 0.8 }],
        stickingOut: [{ part: "handle", where: "right", outUm: 31_750, alongUm: 101_600 }],
        rims: 0,
        lid: null,
        thisSideUp: false,
        frailty: "usual",
        typed: { "body.acrossUm": "4.5", "body.heightUm": "4 in", "stickingOut.0.outUm": "1 1/4" },
      },
    });
  });

  it("comes back into the form as it was typed", () => {
    const reading = read({ hollow: "hollow-inner", "hollows.0.inner": "4 x 3 3/4", thisSideUp: "yes" });
    if (reading.kind !== "piece") throw new Error("it was refused");
    const values = pieceFields(reading.piece, "imperial").flatMap((group) =>
      group.fields.map(({ name, value }): [string, string] => [name, value ?? ""]),
    );
    expect(Object.fromEntries(values.filter(([, value]) => value !== ""))).toEqual({
      ...TYPED,
      hollow: "hollow-inner",
      "hollows.0.inner": "4 x 3 3/4",
      thisSideUp: "yes",
      "stickingOut.2.where": "right",
      "stickingOut.3.where": "right",
    });
  });

  it("takes only the sizes of the chosen form", () => {
    const reading = read({
      form: "flat",
      "flat.acrossUm": "10",
      "flat.thickUm": "1",
      "box.lengthUm": "plenty",
    });
    expect(reading).toMatchObject({
      kind: "piece",
      piece: { body: { kind: "flat", acrossUm: 254_000, longUm: null, thickUm: 25_400 } },
    });
  });

  it.each([
    [{ "round.heightUm": "" }, "round.heightUm", /can’t be read/],
    [{ "round.heightUm": "tall" }, "round.heightUm", /“tall” can’t be read/],
    [{ "round.heightUm": "0" }, "round.heightUm", /more than zero/],
    [{ "round.heightUm": "40 ft" }, "round.heightUm", /At most 3 m/],
    [{ form: "egg" }, "form", /Choose its form/],
    [{ hollow: "hollow-share", "hollows.0.share": "140 %" }, "hollows.0.share", /100 % or less/],
    [{ hollow: "hollow-share" }, "hollows.0.share", /how much of it is hollow/],
    [{ hollow: "hollow-inner", "hollows.0.inner": "6 x 6" }, "hollows.0.inner", /hold more than the whole/],
    [{ "stickingOut.0.part": "" }, "stickingOut.0.part", /Choose what sticks out/],
    [{ "stickingOut.0.outUm": "30" }, "stickingOut.0.outUm", /check its unit/],
    [{ "lid.acrossUm": "9", "lid.heightUm": "1" }, "lid.acrossUm", /wider than its pot/],
    [{ "lid.acrossUm": "3" }, "lid.heightUm", /more than zero/],
  ])("is refused beside the field: %o", (change, field, words) => {
    expect(problems(change)[field]).toMatch(words);
  });

  it.each([
    ["a size in the other measure", { "round.heightUm": "10 cm" }, "round.heightUm"],
    ["two units in one size", { "round.acrossUm": "10 cm 4 in" }, "round.acrossUm"],
    ["a part in the other measure", { "stickingOut.0.outUm": "3 cm" }, "stickingOut.0.outUm"],
    [
      "two units behind one size",
      { hollow: "hollow-inner", "hollows.0.inner": "10 x 4 cm in" },
      "hollows.0.inner",
    ],
    [
      "inner sizes in two measures",
      { hollow: "hollow-inner", "hollows.0.inner": "9 cm x 3 in" },
      "hollows.0.inner",
    ],
  ])("is not guessed at where measures are mixed: %s", (_what, change, field) => {
    expect(problems(change)[field]).toMatch(/in another measure|can’t be read/);
  });

  it("is taken in centimetres throughout, in a shop of inches too", () => {
    const reading = read({
      "round.acrossUm": "11 cm",
      "round.heightUm": "10 cm",
      "stickingOut.0.outUm": "30 mm",
    });
    expect(reading).toMatchObject({ piece: { body: { acrossUm: 110_000, heightUm: 100_000 } } });
  });
});
