"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { type EntryOutcome, sendAll, sendEntry, withdrawEntry } from "./outbox";
import { inOrderPacked, newEntry, type OutboxEntry, type PackedParcel } from "./outbox-entry";
import { outboxPause } from "./outbox-pause";
import { takeOverUnsent } from "./take-over-unsent";
import { thisDevice } from "./this-device";

/** Tabs tell each other over it that the outbox changed. */
const CHANNEL = "wadding-outbox";

/** How often the screen is drawn anew while a long row goes out, in milliseconds. */
const SHOWS_EVERY_MS = 300;

/** What the screen is told while kept parcels are sent by themselves. */
export type OutboxEvents = {
  readonly onOutcome: (entry: OutboxEntry, outcome: EntryOutcome) => void;
  /** All that waited has had its turn. */
  readonly onSent: () => void;
};

/** The parcels kept on this device, and what can be done with them. */
export type Outbox = {
  /** Oldest first. */
  readonly entries: readonly OutboxEntry[];
  /** False where the browser keeps nothing for this page: storage is blocked or full. */
  readonly canKeep: boolean;
  /** Whether the parcel is kept now. */
  readonly keep: (parcel: PackedParcel) => Promise<boolean>;
  readonly send: (id: string) => Promise<EntryOutcome>;
  readonly sendWaiting: () => void;
  /** Whether the program must still be told. */
  readonly withdraw: (entry: OutboxEntry) => Promise<boolean>;
  readonly answerCountOrder: (id: string, countedSameDay: "before" | "after") => Promise<EntryOutcome>;
};

/**
 * Keeps parcels on this device and sends them: when the screen opens, when the connection comes back, when the packer
 * looks at the screen again, when asked, and by itself after longer and longer pauses while something waits.
 * @param isOn false leaves the outbox alone
 * @param events what the screen wants to hear
 * @returns the kept parcels and what can be done
 */
export function useOutbox(isOn: boolean, events: OutboxEvents): Outbox {
  const [entries, setEntries] = useState<readonly OutboxEntry[]>([]);
  const [canKeep, setCanKeep] = useState(true);
  const heard = useRef(events);
  const round = useRef({ isRunning: false, isWantedAgain: false, tries: 0, timer: 0 });
  const channel = useRef<BroadcastChannel | null>(null);
  useEffect(() => {
    heard.current = events;
  });

  /** What the store said; null where this device can't keep parcels. */
  const asked = useCallback(async <Answer>(question: () => Promise<Answer>): Promise<Answer | null> => {
    try {
      const answer = await question();
      setCanKeep(true);
      return answer;
    } catch (error) {
      if (!(error instanceof DOMException)) throw error;
      setCanKeep(false);
      return null;
    }
  }, []);

  const look = useCallback(async (): Promise<void> => {
    const kept = await asked(() => thisDevice().store.all());
    setEntries(inOrderPacked(kept ?? []));
  }, [asked]);

  const changed = useCallback((): Promise<void> => {
    channel.current?.postMessage("changed");
    return look();
  }, [look]);

  const sendInTurn = useCallback(async (): Promise<void> => {
    const { current } = round;
    if (current.isRunning) {
      current.isWantedAgain = true;
      return;
    }
    current.isRunning = true;
    window.clearTimeout(current.timer);
    let shownAt = 0;
    const tell = (entry: OutboxEntry, outcome: EntryOutcome): void => {
      heard.current.onOutcome(entry, outcome);
      if (outcome.kind === "unreachable" || Date.now() - shownAt < SHOWS_EVERY_MS) return;
      shownAt = Date.now();
      void changed();
    };
    let isLeft: boolean | null = null;
    try {
      isLeft = await asked(() => sendAll(thisDevice(), tell));
    } finally {
      current.isRunning = false;
    }
    heard.current.onSent();
    await changed();
    current.tries = isLeft === false ? 0 : current.tries + 1;
    if (current.isWantedAgain) {
      current.isWantedAgain = false;
      void sendInTurn();
    } else if (isLeft !== false) {
      current.timer = window.setTimeout(() => void sendInTurn(), outboxPause(current.tries));
    }
  }, [asked, changed]);

  const sendWaiting = useCallback((): void => {
    round.current.tries = 0;
    void sendInTurn();
  }, [sendInTurn]);

  const keep = async (parcel: PackedParcel): Promise<boolean> => {
    const kept = await asked(async () => {
      const { store, now } = thisDevice();
      await store.keep(newEntry(parcel, now()));
      return true;
    });
    return kept ?? false;
  };

  const send = async (id: string): Promise<EntryOutcome> => {
    const outcome = await asked(() => sendEntry(thisDevice(), id));
    await changed();
    if (outcome === null || outcome.kind === "unreachable") {
      window.clearTimeout(round.current.timer);
      round.current.timer = window.setTimeout(() => void sendInTurn(), outboxPause(1));
    }
    return outcome ?? { kind: "unreachable", why: "failed" };
  };

  const withdraw = async (entry: OutboxEntry): Promise<boolean> => {
    const mustTell = await asked(() => withdrawEntry(thisDevice().store, entry, Date.now()));
    await changed();
    if (mustTell === true) sendWaiting();
    return mustTell !== false;
  };

  const answerCountOrder = async (id: string, countedSameDay: "before" | "after"): Promise<EntryOutcome> => {
    await asked(() =>
      thisDevice().store.change(id, (entry) => ({
        ...entry,
        form: { ...entry.form, countedSameDay },
        state: { kind: "waiting" },
      })),
    );
    return send(id);
  };

  useEffect(() => {
    if (!isOn) return;
    const { current } = round;
    const tabs = new BroadcastChannel(CHANNEL);
    channel.current = tabs;
    tabs.onmessage = () => void look();
    const sendWhenSeen = (): void => {
      if (document.visibilityState === "visible") sendWaiting();
    };
    const start = async (): Promise<void> => {
      await look();
      sendWaiting();
      if (await asked(() => takeOverUnsent(localStorage, thisDevice().store, Date.now()))) sendWaiting();
    };
    void start();
    window.addEventListener("online", sendWaiting);
    document.addEventListener("visibilitychange", sendWhenSeen);
    return () => {
      window.clearTimeout(current.timer);
      window.removeEventListener("online", sendWaiting);
      document.removeEventListener("visibilitychange", sendWhenSeen);
      tabs.close();
      channel.current = null;
    };
  }, [isOn, asked, look, sendWaiting]);

  return { entries, canKeep, keep, send, sendWaiting, withdraw, answerCountOrder };
}
