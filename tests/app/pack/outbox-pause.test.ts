import { describe, expect, it } from "vitest";
import { outboxPause } from "#app/pack/outbox-pause.ts";

describe("the pause before kept parcels are sent again", () => {
  it("doubles from 5 seconds to 5 minutes, and no further", () => {
    const seconds = [1, 2, 3, 4, 5, 6, 7, 8, 500].map((tries) => outboxPause(tries) / 1000);
    expect(seconds).toEqual([5, 10, 20, 40, 80, 160, 300, 300, 300]);
  });
});
