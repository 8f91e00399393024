import { defineConfig } from "vitest/config";

const shared = { environment: "node" as const, env: { TZ: "UTC" }, testTimeout: 60_000, hookTimeout: 60_000 };

/** One project a kind of test, so that each can be run and counted alone. */
export default defineConfig({
  test: {
    passWithNoTests: false,
    maxWorkers: 2, // both cores of a small machine
    projects: [
      { test: { ...shared, name: "unit", include: ["tests/unit/**/*.test.ts"] } },
      {
        test: {
          ...shared,
          name: "reference",
          include: ["tests/reference/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 300_000,
        },
      },
      {
        test: {
          ...shared,
          name: "corpus",
          include: ["tests/corpus/**/*.test.ts"],
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
      {
        test: {
          ...shared,
          name: "faults",
          include: ["tests/faults/**/*.test.ts"],
          testTimeout: 120_000,
          hookTimeout: 300_000,
        },
      },
      {
        test: {
          ...shared,
          name: "pages",
          include: ["tests/pages/**/*.test.ts"],
          retry: 1, // a browser on a busy machine may be looked at a moment too early
          testTimeout: 300_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
});
