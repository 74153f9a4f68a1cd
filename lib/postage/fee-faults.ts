import { nanogramsOf } from "#lib/postage/exact-mass";
import { lengthAsTyped } from "#lib/postage/parcel-size";
import type { RateCard } from "#lib/postage/rate-card";
import { cardError, type RateCardFault } from "#lib/postage/rate-card-fault";
import type { FeeCondition, FeeGroup, RateFee } from "#lib/postage/rate-fee";
import { compareRatios } from "#lib/postage/ratio";
import { measureWords } from "#lib/postage/typed-measure";
import type { Ratio } from "#lib/units/number-text";

/**
 * Faults of one fee: days, zones, rows and amounts.
 *
 * @param card with its zones
 * @param fee of the card
 */
export function feeFaults({ zones }: Pick<RateCard, "zones">, fee: RateFee): RateCardFault[] {
  const name = `Fee ${fee.name}`;
  return [
    ...dayFaults(name, fee),
    ...conditionFaults(name, fee.when),
    ...zoneFaults(name, zones, fee.groups),
    ...fee.groups.flatMap((group) => rowFaults(name, group)),
  ];
}

function dayFaults(name: string, { validFrom, validTo }: RateFee): RateCardFault[] {
  if (validFrom === null || validTo === null || validFrom <= validTo) return [];
  return [cardError(`${name}: its last day ${validTo} is before its first, ${validFrom}. Mend one of them.`)];
}

function conditionFaults(name: string, when: FeeCondition): RateCardFault[] {
  if (when.kind === "always") return [];
  const over: Ratio = when.kind === "volume" ? when.over : when.over.value;
  if (over.numerator < 0n) {
    return [cardError(`${name}: the size over which it falls is below zero. Type it from zero.`)];
  }
  if (when.kind === "volume" || when.upTo === null) return [];
  if (compareRatios(lengthAsTyped(when.upTo), lengthAsTyped(when.over)) > 0) return [];
  return [
    cardError(
      `${name}: it falls on sides over ${measureWords(when.over)} up to ${measureWords(when.upTo)}, which is none. Mend one of them.`,
    ),
  ];
}

function zoneFaults(name: string, zones: readonly string[], groups: readonly FeeGroup[]): RateCardFault[] {
  const named = groups.flatMap((group) => group.zones ?? zones);
  const lost = [...new Set(named)].filter((zone) => !zones.includes(zone));
  const twice = [...new Set(named.filter((zone, at) => named.indexOf(zone) !== at))];
  return [
    ...(groups.length === 0 ? [cardError(`${name}: it has no amount. Add one or take the fee away.`)] : []),
    ...lost.map((zone) =>
      cardError(`${name}, zone ${zone}: the card has no such zone. Add it or mend its name.`),
    ),
    ...twice.map((zone) => cardError(`${name}, zone ${zone}: it stands in two groups. Take it out of one.`)),
  ];
}

function rowFaults(name: string, { zones, rows }: FeeGroup): RateCardFault[] {
  if (zones?.length === 0) {
    return [cardError(`${name}: one of its groups has no zone. Name one or take the group away.`)];
  }
  const where = zones === null ? name : `${name}, zones ${zones.join(", ")}`;
  if (rows.length === 0) return [cardError(`${where}: it has no amount. Add one or take the group away.`)];
  return rows.flatMap(({ upTo, minor }, at) => {
    const row = upTo === null ? `${where}, any weight` : `${where}, up to ${measureWords(upTo)}`;
    const faults: RateCardFault[] = [];
    if (!Number.isSafeInteger(minor) || minor < 0) {
      faults.push(cardError(`${row}: a fee cannot be below zero. Type what the list says.`));
    }
    const next = rows[at + 1]?.upTo;
    if (next === undefined) return faults;
    if (upTo === null) {
      faults.push(cardError(`${row}: rows after it are never reached. Put it last.`));
    } else if (next !== null && compareRatios(nanogramsOf(next), nanogramsOf(upTo)) <= 0) {
      faults.push(cardError(`${row}: the next row is not heavier. Mend it or sort the rows.`));
    }
    return faults;
  });
}
