import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { METHOD_WORDS, methodWords } from "#app/outlook/method-words.ts";

/** How the sources of the reckoning give a way its name. */
const NAMINGS = [
  /^\s+name: "([^"]+)",$/gm,
  /\b(?:averageMethod|crostonMethod|meanRoute)\("([^"]+)"/g,
  /^(?:export )?const (?:SEVERAL_METHODS|BY_RECIPES|SHARE_OF_TRADE|FIRST_WEEKS_METHOD) = "([^"]+)";$/gm,
];

function namesInLib(): Set<string> {
  const folder = "lib/forecast";
  const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((file) =>
    file.endsWith(".ts"),
  );
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8"));
  return new Set(
    texts.flatMap((text) =>
      NAMINGS.flatMap((naming) => [...text.matchAll(naming)].map(([, name]) => name ?? "")),
    ),
  );
}

describe("words for methods", () => {
  it("know every name of the reckoning, and none besides", () => {
    const names = namesInLib();
    for (const kind of [
      "first weeks",
      "pieces by their recipes",
      "share of the trade",
      "several methods",
      "theta",
    ])
      expect(names).toContain(kind);
    expect(Object.keys(METHOD_WORDS).sort()).toEqual([...names].sort());
  });

  it("cover every name constant that a route is made with", () => {
    const routes = [
      "route.ts",
      "shop/recipe-route.ts",
      "shop/shared-route.ts",
      "shop/first-weeks-outlook.ts",
    ];
    const constants = routes.flatMap((file) =>
      [
        ...readFileSync(join("lib/forecast", file), "utf8").matchAll(/^export const [A-Z_]+ = "([^"]+)";$/gm),
      ].map(([, name]) => name),
    );
    expect(constants).toHaveLength(4);
    for (const name of constants) expect(METHOD_WORDS).toHaveProperty([name ?? ""]);
  });

  it("are whole sentences, each way its own", () => {
    const all = Object.values(METHOD_WORDS);
    expect(all.filter(({ sentence }) => !/^[A-Z].*\.$/.test(sentence))).toEqual([]);
    expect(new Set(all.map(({ name }) => name)).size).toBe(all.length);
  });

  it("fall back to the name itself for a way that is gone", () => {
    expect(methodWords("by the moon").sentence).toBe("The way called “by the moon”.");
  });
});
