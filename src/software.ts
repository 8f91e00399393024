import { readFileSync } from "node:fs";

const { name, version } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8")) as {
  name: string;
  version: string;
};

/** Name and version that go into every result. */
export const software = { name, version } as const;
