import { describe, expect, it } from "vitest";
import { matchesLock } from "../../../../app/command-line/set-up/install.mjs";

const LOCK = {
  packages: {
    "": {},
    "node_modules/a": { version: "1.0.0", integrity: "sha512-a" },
    "node_modules/for-another-system": { version: "1.0.0", integrity: "sha512-b", optional: true },
  },
};

describe("installed packages", () => {
  it("match a lock file whose optional packages are absent", () => {
    expect(
      matchesLock(LOCK, { packages: { "node_modules/a": { version: "1.0.0", integrity: "sha512-a" } } }),
    ).toBe(true);
  });

  it("do not match where a package is missing", () => {
    expect(matchesLock(LOCK, { packages: {} })).toBe(false);
  });

  it("do not match where a version or its contents are others", () => {
    const installed = (entry: { version: string; integrity: string }) => ({
      packages: { "node_modules/a": entry },
    });
    expect(matchesLock(LOCK, installed({ version: "1.0.1", integrity: "sha512-a" }))).toBe(false);
    expect(matchesLock(LOCK, installed({ version: "1.0.0", integrity: "sha512-c" }))).toBe(false);
  });
});
