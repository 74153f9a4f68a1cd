import { configDefaults, defineConfig } from "vitest/config";
import { LongestFirst } from "./tests/longest-first.ts";

// Tests that put something in place of a module or of a global, or that must not share a process with others.
const APART = ["tests/app/api/**/*.test.ts", "tests/app/server/{kill*,fresh-forecast}.test.ts"];

const limits = { environment: "node", testTimeout: 180_000, hookTimeout: 180_000 } as const;

export default defineConfig({
  test: {
    maxWorkers: 2,
    sequence: { sequencer: LongestFirst },
    projects: [
      {
        test: {
          ...limits,
          name: "together",
          include: ["tests/**/*.test.{ts,tsx}"],
          exclude: [...configDefaults.exclude, "tests/browser/**", ...APART],
          // Most files take a few milliseconds, and a process of its own for each takes half a second.
          isolate: false,
        },
      },
      { test: { ...limits, name: "apart", include: APART } },
    ],
  },
});
