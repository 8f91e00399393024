import { cp, readdir, rm, stat, writeFile } from "node:fs/promises";
import path from "node:path";
import { outputIsFile, outputIsNotOurs } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import { makeFolder } from "../storage/makeFolder.ts";

/** Lies in every site we build; a folder that holds it may be replaced by the next build. */
export const siteMarker = "morascope-site.json";

/** Throws a UserError when `folder` holds files that no build of ours put there. */
export async function refuseForeignFolder(folder: string): Promise<void> {
  const entries = await readdir(folder).catch((error: NodeJS.ErrnoException): string[] => {
    if (error.code === "ENOENT") return [];
    if (error.code === "ENOTDIR") throw new UserError(outputIsFile(folder));
    throw error;
  });
  if (entries.length > 0 && !entries.includes(siteMarker))
    throw new UserError(outputIsNotOurs(folder, entries));
}

/** Replaces what is in `folder` by the finished site. The marker goes first, so that a copy cut short can be repeated. */
export async function replaceSite(built: string, folder: string, marker: object): Promise<void> {
  await refuseForeignFolder(folder);
  await makeFolder(folder);
  await writeFile(path.join(folder, siteMarker), `${JSON.stringify(marker, null, 2)}\n`);
  for (const entry of await readdir(folder)) {
    if (entry !== siteMarker) await rm(path.join(folder, entry), { recursive: true, force: true });
  }
  await cp(built, folder, { recursive: true });
}

export async function isSite(folder: string): Promise<boolean> {
  return stat(path.join(folder, siteMarker)).then(
    (entry) => entry.isFile(),
    () => false,
  );
}
