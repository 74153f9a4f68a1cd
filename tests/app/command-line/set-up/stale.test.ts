import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { fingerprint, isStale } from "../../../../app/command-line/set-up/stale.mjs";

let folder = "";

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), "wadding-stale-"));
  mkdirSync(join(folder, "app", "inner"), { recursive: true });
  writeFileSync(join(folder, "app", "inner", "a.ts"), "1");
});

afterEach(() => rmSync(folder, { recursive: true, force: true }));

const print = (leaveOut?: (path: string) => boolean) => fingerprint(["app", "missing"], leaveOut, folder);

describe("fingerprint", () => {
  it("stays the same while nothing changes", () => {
    expect(print()).toBe(print());
  });

  it("changes with the contents of a file, with its name, and with a new file", () => {
    const before = print();
    writeFileSync(join(folder, "app", "inner", "a.ts"), "2");
    const changed = print();
    writeFileSync(join(folder, "app", "b.ts"), "");
    expect(new Set([before, changed, print()]).size).toBe(3);
  });

  it("does not see what is left out", () => {
    const before = print((path) => path === "app/inner");
    writeFileSync(join(folder, "app", "inner", "a.ts"), "2");
    expect(print((path) => path === "app/inner")).toBe(before);
  });
});

describe("isStale", () => {
  it("is true for what was never made", () => {
    expect(isStale("never-made", print())).toBe(true);
  });
});
