import { open, rename, rm } from "node:fs/promises";

/** Writes a file under a temporary name, syncs and renames it: readers see the old file or the new one, never half. */
export async function writeFileAtomic(path: string, content: string | Uint8Array): Promise<void> {
  const partial = `${path}.partial.tmp`;
  try {
    const file = await open(partial, "w");
    try {
      await file.writeFile(content);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(partial, path);
  } finally {
    await rm(partial, { force: true });
  }
}

export async function syncFile(path: string): Promise<void> {
  const file = await open(path, "r+");
  try {
    await file.sync();
  } finally {
    await file.close();
  }
}

/** JSON with two-space indent and a final newline, written atomically. */
export async function writeJson(path: string, value: unknown): Promise<void> {
  await writeFileAtomic(path, `${JSON.stringify(value, null, 2)}\n`);
}
