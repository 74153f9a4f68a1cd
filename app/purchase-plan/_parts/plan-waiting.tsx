"use client";

import { useRouter } from "next/navigation";
import { useEffect, useState } from "react";
import { z } from "zod";
import { Button } from "../../_parts/button";

const answer = z.object({ kind: z.string() });
const ASK_EVERY_MS = 1_000;
const REFRESH_AGAIN_MS = 10_000;

/**
 * Says that the plan is being worked out. When it is there the page moves on by itself, unless somebody has begun to
 * change the orders: then they say when.
 */
export function PlanWaiting({ question }: { readonly question: string }) {
  const router = useRouter();
  const [isReady, setReady] = useState(false);
  useEffect(() => {
    const orders = document.getElementById("plan");
    let isTouched = false;
    const touch = () => {
      isTouched = true;
    };
    orders?.addEventListener("input", touch);
    orders?.addEventListener("click", touch);
    let timer: ReturnType<typeof setTimeout>;
    async function ask() {
      const hasMovedOn = (await kindOf(question)) !== "working";
      if (hasMovedOn && isTouched) return setReady(true);
      if (hasMovedOn) router.refresh();
      timer = setTimeout(ask, hasMovedOn ? REFRESH_AGAIN_MS : ASK_EVERY_MS);
    }
    timer = setTimeout(ask, ASK_EVERY_MS);
    return () => {
      clearTimeout(timer);
      orders?.removeEventListener("input", touch);
      orders?.removeEventListener("click", touch);
    };
  }, [question, router]);
  return isReady ? (
    <div role="status">
      The plan over all suppliers is ready.{" "}
      <Button type="button" tone="plain" onPress={() => router.refresh()}>
        Show it in place of what you began
      </Button>
    </div>
  ) : (
    <p role="status">
      The plan over all suppliers is being worked out; until then each supply is ordered by itself.
    </p>
  );
}

/** "working" too where the program does not answer just now: it is asked again. */
async function kindOf(question: string): Promise<string> {
  try {
    const response = await fetch(`/api/purchase-plan?question=${question}`, { cache: "no-store" });
    return response.ok ? answer.parse(await response.json()).kind : "working";
  } catch (error) {
    if (error instanceof TypeError) return "working";
    throw error;
  }
}
