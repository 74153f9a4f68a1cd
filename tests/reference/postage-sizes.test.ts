import { nanogramsOf } from "#lib/postage/exact-mass";
import { lengthAndGirth } from "#lib/postage/length-and-girth";
import { type ParcelSize, sidesIn } from "#lib/postage/parcel-size";
import type { RateCard } from "#lib/postage/rate-card";
import type { RateFee } from "#lib/postage/rate-fee";
import { ratedParcel } from "#lib/postage/rated-parcel";
import { ratioNumber, ratioProduct } from "#lib/postage/ratio";
import { rounded } from "#lib/postage/ratio-rounding";
import { NO_WALLS } from "#lib/postage/size-walls";
import { measureWords } from "#lib/postage/typed-measure";
import { day } from "#lib/units/day";
import { minorUnits } from "#lib/units/money";
import {
  exact,
  plainBand,
  plainCard,
  sized,
  stepUpTo,
  typed,
  weighed,
} from "../lib/postage/rate-card-fixture";
import { checkPostageCases, type GivenCase } from "./postage-cases";

const SHIP_DAY = day("2026-01-10");
const STEPS = [stepUpTo("70", "lb", [2000])];
const within = (inches: string) => ({
  ...NO_WALLS,
  lengthAndGirth: typed(inches, "in"),
  weight: typed("70", "lb"),
});

/** Limits of the services; prices invented. Carrying the 2019 ground text to the present service is from memory. */
const SERVICES: Readonly<Record<string, RateCard>> = {
  priority: plainCard({ bands: [plainBand(STEPS, { walls: within("108") })] }),
  ground: plainCard({
    bands: [
      plainBand(STEPS, { name: "standard", walls: within("108") }),
      plainBand([stepUpTo("70", "lb", [9000])], { name: "oversized", walls: within("130") }),
    ],
  }),
};

const fee = (name: string, when: RateFee["when"], minor: number): RateFee => ({
  name,
  validFrom: null,
  validTo: null,
  when,
  groups: [{ zones: null, rows: [{ upTo: null, minor: minorUnits(minor) }] }],
});

/** Amounts as of 2022 (https://eseller365.com/usps-prc-delay-nonstandard-fees-april-2022/); the present ones were not seen. */
const FEES = [
  fee(
    "over-22-to-30",
    { kind: "side", which: "longest", over: typed("22", "in"), upTo: typed("30", "in") },
    400,
  ),
  fee("over-30", { kind: "side", which: "longest", over: typed("30", "in"), upTo: null }, 1500),
  fee("volume", { kind: "volume", over: exact("3456"), unit: "in" }, 1500),
];

function rated(card: RateCard | undefined, size: ParcelSize | null, weight = weighed("5 lb")) {
  if (card === undefined) throw new RangeError("rated requires a card, got none");
  return ratedParcel({ card, zone: "home", weight, size, shipDay: SHIP_DAY });
}

const sizeOf = (given: GivenCase) =>
  sized(`${given.text("lengthIn")} x ${given.text("widthIn")} x ${given.text("heightIn")} in`);

checkPostageCases("sizeLimits", [
  [
    /^lg-/,
    (given) => {
      const { length, girth, sum } = lengthAndGirth(sidesIn(sizeOf(given), "in"));
      given.meets("lengthIn", ratioNumber(length));
      given.meets("girthIn", ratioNumber(girth));
      given.meets("lengthPlusGirthIn", ratioNumber(sum));
    },
  ],
  [
    /^limit-(priority|ground)-/,
    (given) => {
      // A parcel of 10 x 10 in, 40 in round.
      const length = (Number(given.text("lengthPlusGirthIn")) - 40).toFixed(1);
      const rating = rated(SERVICES[given.text("service")], sized(`${length} x 10 x 10 in`));
      given.meets("accepted", rating.kind === "priced");
      if (!given.expects("priceCategory")) return;
      given.meets("priceCategory", rating.kind === "priced" ? rating.step.band.name : rating.kind);
    },
  ],
  [
    /^limit-weight-/,
    (given) => {
      const pounds = typed(given.text("weightLb"), "lb");
      const weight = { ng: nanogramsOf(pounds), text: measureWords(pounds) };
      const kinds = Object.values(SERVICES).map((card) => rated(card, sized("12 x 12 x 12 in"), weight).kind);
      given.meets(
        "accepted",
        kinds.every((kind) => kind === "priced"),
      );
    },
  ],
  [
    /^fee-/,
    (given) => {
      const size = sizeOf(given);
      const rating = rated(plainCard({ bands: [plainBand(STEPS)], fees: FEES }), size);
      const charged = rating.kind === "priced" ? rating.fees : [];
      const tiers = charged.filter(({ name }) => name !== "volume").map(({ name }) => name);
      given.meets("lengthFeeTier", tiers.length === 0 ? "none" : tiers.join());
      given.meets(
        "volumeFee",
        charged.some(({ name }) => name === "volume"),
      );
      if (given.expects("volumeIn3")) {
        given.meets("volumeIn3", ratioNumber(ratioProduct(...sidesIn(size, "in"))));
      }
      if (!given.expects("feesAdd")) return;
      given.meets("feesAdd", rating.kind === "priced" && rating.minor === 2000 + 400 + 1500);
    },
  ],
  [
    /^cubic-tier-rounds-down-quarter$/,
    (given) => {
      const side = rounded(exact(given.text("valueIn")), { kind: "down", to: exact("0.25") });
      given.meets("roundedIn", ratioNumber(side));
    },
  ],
]);
