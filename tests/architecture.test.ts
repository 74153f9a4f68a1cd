import { existsSync, readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { cruise, type ICruiseResult, type IModule } from "dependency-cruiser";
import { beforeAll, describe, expect, it } from "vitest";

/** What each folder of lib/ may lean on, besides itself. */
const ARROWS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  statistics: ["units"],
  packing: ["units", "statistics"],
  postage: ["units", "statistics"],
  forecast: ["units", "statistics"],
  replenishment: ["units", "statistics", "forecast"],
  optimisation: ["units"],
  cartons: ["units", "statistics", "packing", "postage", "optimisation"],
  purchasing: ["units", "statistics", "forecast", "replenishment", "optimisation"],
  cushioning: ["units", "statistics", "packing", "cartons", "postage", "purchasing", "optimisation"],
};

const PURE_PACKAGES = ["date-fns", "simple-statistics"];
const LAYERS = ["lib", "prisma", "app"];
const JUNK_NAME = /^(utils?|helpers?|misc|common|shared|types)$/;

let modules: readonly IModule[] = [];

beforeAll(async () => {
  const { output } = await cruise(LAYERS, {
    exclude: { path: "^prisma/generated" },
    doNotFollow: { path: "node_modules" },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["import", "types", "node"] },
  });
  modules = (output as ICruiseResult).modules;
}, 180_000);

type Import = { readonly from: string; readonly to: string; readonly typeOnly: boolean };

function imports(): Import[] {
  return modules.flatMap((module) =>
    module.dependencies.map((dependency) => ({
      from: module.source,
      to: dependency.resolved,
      typeOnly: dependency.dependencyTypes.includes("type-only"),
    })),
  );
}

function files(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (path === "prisma/generated" || path === "tests/reference/data") return [];
    return entry.isDirectory() ? files(path) : [path];
  });
}

function sources(folder: string): { path: string; text: string }[] {
  return files(folder)
    .filter((path) => /\.(ts|tsx|mjs)$/.test(path))
    .map((path) => ({ path, text: readFileSync(path, "utf8") }));
}

const words = ({ from, to }: Import): string => `${from} -> ${to}`;

describe("imports", () => {
  it("were read: every source of lib is among the modules, and the layers are linked", () => {
    const cruised = new Set(modules.map((module) => module.source));
    const missed = sources("lib").filter(({ path }) => !cruised.has(path));
    expect(missed.map(({ path }) => path)).toEqual([]);
    const all = imports();
    expect(all.filter(({ from, to }) => from.startsWith("lib/") && to.startsWith("lib/"))).not.toEqual([]);
    expect(all.filter(({ from, to }) => from.startsWith("prisma/") && to.startsWith("lib/"))).not.toEqual([]);
    expect(all.filter(({ from, to }) => from.startsWith("app/") && to.startsWith("prisma/"))).not.toEqual([]);
  });

  it("all lead to a file or a package that is there", () => {
    const lost = modules.flatMap((module) =>
      module.dependencies
        .filter((dependency) => dependency.couldNotResolve)
        .map((dependency) => `${module.source} -> ${dependency.module}`),
    );
    expect(lost).toEqual([]);
  });

  it("run from app to prisma to lib, never back", () => {
    const rank = (path: string) => LAYERS.findIndex((layer) => path.startsWith(`${layer}/`));
    const back = imports().filter(({ from, to }) => rank(to) > rank(from));
    expect(back.map(words)).toEqual([]);
  });

  it("never reach tests from the program", () => {
    expect(
      imports()
        .filter(({ to }) => to.startsWith("tests/"))
        .map(words),
    ).toEqual([]);
  });

  it("take prisma into a client component as types only", () => {
    const clients = new Set(
      sources("app")
        .filter(({ text }) => /^["']use client["']/.test(text))
        .map(({ path }) => path),
    );
    const reaching = imports().filter(
      ({ from, to, typeOnly }) => clients.has(from) && to.startsWith("prisma/") && !typeOnly,
    );
    expect(reaching.map(words)).toEqual([]);
  });

  it("make no circle inside lib", () => {
    const circles = modules.flatMap((module) =>
      module.dependencies
        .filter((dependency) => dependency.circular && module.source.startsWith("lib/"))
        .map((dependency) => `${module.source} -> ${dependency.resolved}`),
    );
    expect(circles).toEqual([]);
  });
});

describe("lib", () => {
  it("leans only on itself and on pure packages", () => {
    const pure = (to: string) =>
      to.startsWith("lib/") || PURE_PACKAGES.some((name) => to.includes(`node_modules/${name}/`));
    const impure = imports().filter(({ from, to }) => from.startsWith("lib/") && !pure(to));
    expect(impure.map(words)).toEqual([]);
  });

  it("has only folders whose arrows are drawn", () => {
    const folders = readdirSync("lib", { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    expect(folders.filter((folder) => ARROWS[folder] === undefined)).toEqual([]);
  });

  it("keeps its inner arrows one way", () => {
    const folder = (path: string) => path.split("/")[1] ?? "";
    const wrong = imports().filter(({ from, to }) => {
      if (!from.startsWith("lib/") || !to.startsWith("lib/")) return false;
      const allowed = ARROWS[folder(from)] ?? [];
      return folder(from) !== folder(to) && !allowed.includes(folder(to));
    });
    expect(wrong.map(words)).toEqual([]);
  });

  it("asks no clock, no dice, no network and no environment", () => {
    const impure =
      /\bDate\.now\(|\bnew Date\(\)|\bDate\(\)|\bMath\.random\b|\bperformance\.|\bcrypto\.|\bfetch\(|\bprocess\./;
    const code = (text: string) => text.replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, "");
    expect(
      sources("lib")
        .filter(({ text }) => impure.test(code(text)))
        .map(({ path }) => path),
    ).toEqual([]);
  });

  it("has a mirrored test for every file that does something", () => {
    const untested = sources("lib")
      .filter(({ text }) => /^export (async )?(function|const|class)/m.test(text))
      .filter(({ path }) => !existsSync(join("tests", path.replace(/\.ts$/, ".test.ts"))));
    expect(untested.map(({ path }) => path)).toEqual([]);
  });
});

describe("records", () => {
  it("are the only place with raw SQL, besides the client, the migrations and the backup", () => {
    const allowed = /^prisma\/(records\/|client\.ts|migrate\.ts|backup\.ts|table-digests\.ts)/;
    const raw = [...sources("app"), ...sources("prisma")]
      .filter(({ path }) => !allowed.test(path) && !path.startsWith("app/command-line/"))
      .filter(({ text }) => /\$(queryRaw|executeRaw)|from "better-sqlite3"/.test(text));
    expect(raw.map(({ path }) => path)).toEqual([]);
  });

  it("keep the generated client to prisma", () => {
    const outside = sources("app").filter(({ text }) => /from "[^"]*prisma\/generated/.test(text));
    expect(outside.map(({ path }) => path)).toEqual([]);
  });
});

describe("names", () => {
  it("say what a file holds: no junk drawers", () => {
    const junk = ["app", "lib", "prisma", "tests"]
      .flatMap(files)
      .filter((path) => path.split("/").some((part) => JUNK_NAME.test(basename(part).replace(/\..*$/, ""))));
    expect(junk).toEqual([]);
  });

  it("stand on files of at most 300 lines", () => {
    const long = ["app", "lib", "prisma", "tests"]
      .flatMap(sources)
      .filter(({ text }) => text.split("\n").length > 301);
    expect(long.map(({ path }) => path)).toEqual([]);
  });
});
