import { describe, expect, it } from "vitest";
import { wantedPort } from "../../../../app/command-line/set-up/wanted-port.mjs";

describe("the wanted port", () => {
  it("is 3000 or the next free one where none is asked for", () => {
    expect(wantedPort(undefined)).toEqual({ port: 3000, exactly: false });
  });

  it("is exactly the one asked for", () => {
    expect(wantedPort("4100")).toEqual({ port: 4100, exactly: true });
  });

  it.each(["-1", "65536", "3000.5", "three", "3e3"])("cannot be %s", (text) => {
    expect(() => wantedPort(text)).toThrow(RangeError);
  });
});
