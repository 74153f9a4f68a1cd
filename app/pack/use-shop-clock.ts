"use client";

import { useEffect, useState } from "react";
import type { Day } from "#lib/units/day";
import { instantOfTime, shopDay } from "#lib/units/instant";

/** How often the clock is looked at, in milliseconds. */
const LOOKS_EVERY_MS = 20_000;

/** The shop's day, and the time in milliseconds since 1970; no time until the browser has told it. */
export type ShopClock = { readonly today: Day; readonly now: number | null };

/**
 * The shop's clock on this device. A screen that stays open overnight, with or without a connection, knows the new day.
 * @param read the shop's day when the screen was read
 * @param timeZone the shop's
 */
export function useShopClock(read: Day, timeZone: string): ShopClock {
  const [now, setNow] = useState<number | null>(null);
  useEffect(() => {
    const look = (): void => setNow(Date.now());
    look();
    const timer = setInterval(look, LOOKS_EVERY_MS);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return { now, today: now === null ? read : shopDay(instantOfTime(now), timeZone) };
}
