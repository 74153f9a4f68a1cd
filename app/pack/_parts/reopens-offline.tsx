"use client";

import { useEffect } from "react";

/**
 * Lets a closed Pack screen open again without a connection: a worker of the browser keeps a copy of the screen.
 * Browsers allow one only over https or on the same machine; elsewhere nothing is asked for, and an open screen goes
 * on all the same. The mark in the page tells the worker that this is the program it belongs to.
 */
export function ReopensOffline({ build }: { readonly build: string }) {
  useEffect(() => {
    if (!window.isSecureContext || !("serviceWorker" in navigator)) return;
    // Where the browser refuses, only reopening is lost.
    navigator.serviceWorker
      .register(`/pack-worker.js?build=${encodeURIComponent(build)}`, { scope: "/pack" })
      .catch(reportError);
  }, [build]);
  return <meta name="wadding-pack" content={build} />;
}
