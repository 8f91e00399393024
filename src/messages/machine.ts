const goOn = "Then run the same command again: what was finished is kept and not worked out twice.";

/** What the machine did not allow, by the system's code; `%` stands for the place. */
const reasons: Readonly<Record<string, string>> = {
  ENOSPC: `The disk is full%. Free some space, or choose a folder on another disk with --out. ${goOn}`,
  EDQUOT: `Your share of the disk is used up%. Free some space, or choose a folder on another disk with --out. ${goOn}`,
  EROFS: "This disk may only be read%. Choose another folder with --out.",
  EACCES: "You may not read or write%. Change its permissions, or choose another folder.",
  EPERM: "You may not read or write%. Change its permissions, or choose another folder.",
  EMFILE: `Too many files are open at once%. Allow more (\`ulimit -n 4096\`) or close other programs. ${goOn}`,
  ENFILE: `The machine has too many files open%. Close other programs. ${goOn}`,
  ENOMEM: `The memory is full%. Close other programs, or give the tables less with --memory. ${goOn}`,
  EIO: `The disk gave an error%. Look after the disk. ${goOn}`,
  ENOENT: `A file or folder went away while it was needed%. Put it back. ${goOn}`,
};

/** Phrases in which the database and the system tell the same without a code. */
const phrases: readonly (readonly [RegExp, string])[] = [
  [/no space left on device|failed to offload|could not write.*space/i, "ENOSPC"],
  [/disk quota exceeded/i, "EDQUOT"],
  [/read-only file system/i, "EROFS"],
  [/too many open files/i, "EMFILE"],
  [/permission denied/i, "EACCES"],
  [/out of memory|allocation failure|array buffer allocation failed/i, "ENOMEM"],
];

/** What to say of an error that is the machine's and not the program's; null for any other. */
export function machineFault(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const { code, path, message } = error as NodeJS.ErrnoException;
  const known =
    code !== undefined && Object.hasOwn(reasons, code)
      ? code
      : phrases.find(([pattern]) => pattern.test(message))?.[1];
  if (known === undefined) return null;
  const place = path ?? /(?:file|path|directory) "([^"]+)"/i.exec(message)?.[1];
  return reasons[known]!.replace("%", () => (place === undefined ? "" : `: ${place}`));
}
