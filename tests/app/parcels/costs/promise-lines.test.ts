import { describe, expect, it } from "vitest";
import { promiseLines } from "#app/parcels/costs/promise-lines.ts";
import { promiseWords } from "#app/parcels/costs/promise-words.ts";

const KEPT = { promisedMg: 900_000, scaleMg: 900_000 };
const BROKEN = { promisedMg: 900_000, scaleMg: 900_001 };
const OPEN = { promisedMg: 900_000, scaleMg: null };
const of = (itemTypeId: string) => (parcel: typeof KEPT | typeof OPEN) => ({ itemTypeId, ...parcel });

describe("promises kept", () => {
  it("are told by item type, the most promised first, and all together", () => {
    const lines = promiseLines(
      [BROKEN].map(of("bowl")).concat([KEPT, KEPT, KEPT, BROKEN, OPEN].map(of("mug"))),
    );
    expect(lines).toMatchObject([
      { itemTypeId: "mug", made: 4, kept: 3, unweighed: 1 },
      { itemTypeId: "bowl", made: 1, kept: 0, unweighed: 0 },
      { itemTypeId: null, made: 5, kept: 3, unweighed: 1 },
    ]);
  });

  it("say how little few promises tell", () => {
    // Clopper and Pearson's interval of 3 of 4 at 90 %: 0.2486 to 0.9873 (R's binom.test, from memory).
    const [line] = promiseLines([KEPT, KEPT, KEPT, BROKEN].map(of("mug")));
    expect(line && promiseWords(line)).toBe("3 of 4 kept; truly between 25 and 99 %, 9 times in 10");
  });

  it("of parcels that nobody weighed are not told", () => {
    const [line] = promiseLines([OPEN, OPEN].map(of("mug")));
    expect(line && promiseWords(line)).toBe("none weighed yet, so none can be told; 2 never weighed");
  });
});
