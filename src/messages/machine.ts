const goOn = "Then run the same command again: what was finished is kept and not worked out twice.";

/** What the machine did not allow, by the system's code (EMEMORYLIMIT is the tables' own limit); `%` stands for the place. */
const reasons: Readonly<Record<string, string>> = {
  ENOSPC: `The disk is full%. Free some space, or choose a folder on another disk with --out. ${goOn}`,
  EDQUOT: `Your share of the disk is used up%. Free some space, or choose a folder on another disk with --out. ${goOn}`,
  EROFS: "This disk may only be read%. Choose another folder with --out.",
  EACCES: "You may not read or write%. Change its permissions, or choose another folder.",
  EPERM: "You may not read or write%. Change its permissions, or choose another folder.",
  EMFILE: `Too many files are open at once%. Allow more (\`ulimit -n 4096\`) or close other programs. ${goOn}`,
  ENFILE: `The machine has too many files open%. Close other programs. ${goOn}`,
  ENOMEM: `The memory is full%. Close other programs, or give the tables less with --memory. ${goOn}`,
  EMEMORYLIMIT: `The tables need more memory than they may take%. Give them more with --memory, e.g. --memory 512. ${goOn}`,
  EFBIG: `A file may not grow any further%. Allow larger files (\`ulimit -f unlimited\`), or choose a folder on another disk with --out. ${goOn}`,
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
  [/failed to (allocate|pin)[^(]*\([^)]*used\)/i, "EMEMORYLIMIT"],
  [/out of memory|could not allocate|allocation failure|array buffer allocation failed/i, "ENOMEM"],
];

/** What one piece of work alone may meet: a recording that unpacks to gigabytes, a file that was just removed. */
const passing = ["ENOMEM", "ENOENT"];

/** What to say of an error that is the machine's and not the program's; null for any other. */
export function machineFault(error: unknown): string | null {
  const code = codeOf(error);
  if (code === null) return null;
  const { path, message } = error as NodeJS.ErrnoException;
  const place = path ?? /(?:file|path|directory) "([^"]+)"|'([^']+)'$/i.exec(message)?.slice(1).join("");
  return reasons[code]!.replace("%", () => (place === undefined ? "" : `: ${place}`));
}

/** The same, of a fault that all further work would meet too; null for any other. */
export function lastingFault(error: unknown): string | null {
  return passing.includes(codeOf(error) ?? passing[0]!) ? null : machineFault(error);
}

/** Whether an error says nothing of the file that it was met with: too many files are open. */
export function isExhausted(error: unknown): boolean {
  return ["EMFILE", "ENFILE"].includes(codeOf(error) ?? "");
}

/** The system's code of a fault of the machine; null for any other error. Threads and queues hand on the message alone. */
function codeOf(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const { code, message } = error as NodeJS.ErrnoException;
  const written = /^(E[A-Z]+): /.exec(message)?.[1];
  const known = [code, written].find((one) => one !== undefined && Object.hasOwn(reasons, one));
  return known ?? phrases.find(([pattern]) => pattern.test(message))?.[1] ?? null;
}

/** Exit code for what the machine did not allow: nothing of ours is wrong, and the command can be run again. */
export const machineRefused = 74;
