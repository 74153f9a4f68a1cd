import { describe, expect, it } from "vitest";
import { refusedNodeVersion } from "../../../../app/command-line/set-up/node-version.mjs";

describe("the version of Node.js", () => {
  it.each(["20.19.0", "20.20.2", "22.0.0", "24.11.1", "26.9.9"])("%s will do", (version) => {
    expect(refusedNodeVersion(version)).toBeNull();
  });

  it.each(["18.20.8", "20.18.3", "27.0.0"])("%s is refused, with the versions that will do", (version) => {
    expect(refusedNodeVersion(version)).toContain(`needs Node.js 20.19 to 26; this is ${version}`);
  });
});
