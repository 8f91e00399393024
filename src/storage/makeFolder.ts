import { existsSync } from "node:fs";
import { mkdir } from "node:fs/promises";
import { dirname, resolve } from "node:path";

/** Makes a folder and those above it. One by one: all at once, Node never ends in places that hold no folders, as /proc. */
export async function makeFolder(folder: string): Promise<void> {
  const missing: string[] = [];
  for (let at = resolve(folder); !existsSync(at); at = dirname(at)) missing.unshift(at);
  for (const one of missing)
    await mkdir(one).catch((error: NodeJS.ErrnoException) => {
      if (error.code !== "EEXIST") throw error;
    });
}
