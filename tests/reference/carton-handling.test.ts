import { expect } from "vitest";
import { DENSE_DROP_INCHES, DROPS_SEEN, dropHeights } from "#lib/cartons/strength/drop-heights";
import { LIFTING_LIMITS, recommendedPounds } from "#lib/cartons/strength/lifting";
import { massOf } from "../lib/cartons/strength/packed-load";
import { checkPublishedCases, readCases } from "./published-cases";

const CASES = readCases<"dropHeights" | "handling">("carton-cases.json");

checkPublishedCases("drop heights", CASES.dropHeights, [
  [
    /^ista1a-band-/,
    (given) => {
      const from = dropHeights(massOf(given.number("fromLb") === 0 ? "1 oz" : `${given.text("fromLb")} lb`));
      // The last row holds its upper bound as well.
      const last = given.number("belowLb") === 150 ? "150 lb" : `${given.number("belowLb") - 0.001} lb`;
      expect(dropHeights(massOf(last)).ista1aInches).toBe(from.ista1aInches);
      given.meets("dropIn", from.ista1aInches);
      given.meets("ista2aDropIn", from.ista2aInches);
    },
  ],
  [
    /^ista1a-[\d_]+lb$/,
    (given) => given.meets("dropIn", dropHeights(massOf(`${given.text("weightLb")} lb`)).ista1aInches),
  ],
  [
    /^d4169-A-/,
    (given) => {
      const upTo = dropHeights(massOf(`${given.text("toLb")} lb`)).d4169Inches;
      const above = dropHeights(massOf(`${given.number("fromLb") + 0.01} lb`)).d4169Inches;
      expect(above).toEqual(upTo);
      given.meets("levelI_II_III_In", upTo);
    },
  ],
  [
    /^postal-study-95pct$/,
    (given) => {
      given.meets("p95DropIn", DROPS_SEEN.mostlyUnderInches);
      given.meets("maxDropIn", DROPS_SEEN.highestInches);
      given.meets("dropsPerOneWayTrip", DROPS_SEEN.perTrip);
    },
  ],
  [
    /^pub2-integrity-drop$/,
    (given) => {
      given.meets("dropIn", DENSE_DROP_INCHES);
      given.notReckoned("face");
    },
  ],
]);

checkPublishedCases("lifting", CASES.handling, [
  [
    /^niosh-/,
    (given) => {
      const pounds = recommendedPounds({
        reachInches: given.number("H_in"),
        heightInches: given.number("V_in"),
        travelInches: given.number("D_in"),
        twistDegrees: given.number("A_deg"),
        frequency: given.number("FM"),
        grip: given.number("CM"),
      });
      given.meets("rwlLb", pounds);
      if (given.expects("liftingIndex")) given.meets("liftingIndex", given.number("loadLb") / pounds);
    },
  ],
  [
    /^d6804-single-person$/,
    (given) => given.meets("typicalMaxLb", [LIFTING_LIMITS.imperial.alone, LIFTING_LIMITS.imperial.help]),
  ],
]);
