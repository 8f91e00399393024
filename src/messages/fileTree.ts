/** Wording of what a folder, an archive or a text file can be refused for. */
export interface FileWording {
  readonly rule: string;
  readonly message: string;
  readonly wayOut: string;
}

export const folderMissing = (folder: string): string =>
  `${folder} does not exist. Give the path of the folder that holds the dataset.`;

export const folderIsFile = (path: string): string =>
  `${path} is a file, not a folder. Give the folder it lies in; archives (.tar, .tar.gz, .tar.xz) in a folder are read as they are.`;

export const folderUnreadable = (folder: string, reason: string): string =>
  `${folder} cannot be read (${reason}). Check its permissions.`;

export const fileUnreadable = (path: string, reason: string): string =>
  `${path} cannot be read (${reason}). Check that it is still there and may be read.`;

export const pathOutsideArchive = (name: string): FileWording => ({
  rule: "path-outside",
  message: `The archive holds ${quote(name)}, which would be written outside the folder.`,
  wayOut: "Fetch the archive again from its makers, or unpack it yourself after looking at it with `tar -t`.",
});

export const linkOutside = (name: string, target: string): FileWording => ({
  rule: "link-outside",
  message: `${quote(name)} is a link to ${quote(target)}, which is outside the folder.`,
  wayOut: "Copy the files into the folder, or give the folder they really lie in.",
});

export const linkBroken = (name: string, target: string): FileWording => ({
  rule: "link-broken",
  message: `${quote(name)} is a link to ${quote(target)}, where no file is.`,
  wayOut: "Remove the link or put the file in its place.",
});

export const linksTooMany = (name: string, target: string, most: number): FileWording => ({
  rule: "links-too-many",
  message: `${quote(name)} is a link to ${quote(target)}, to which ${most} other links lead already; it was not followed.`,
  wayOut: "Remove links between folders that lead to each other.",
});

export const nameUnreadable = (name: string): FileWording => ({
  rule: "name-unreadable",
  message: `The name of ${quote(name)} is not UTF-8, so that the file cannot be opened, or the file was just removed.`,
  wayOut:
    "Rename it, or unpack the archive it came in again with its names converted (for instance `unzip -O cp932` for archives from Japanese Windows).",
});

export const specialFile = (name: string): FileWording => ({
  rule: "special-file",
  message: `${quote(name)} is neither file nor folder (a device, socket or pipe) and was skipped.`,
  wayOut: "Remove it from the folder.",
});

export const archiveTooLarge = (limitBytes: number): FileWording => ({
  rule: "archive-too-large",
  message: `The archive unpacks to more than ${megabytes(limitBytes)}, the most that is kept in memory.`,
  wayOut:
    "Unpack it yourself with `tar -xf` beside the archive and run again: unpacked files are read from disk.",
});

export const archiveTooManyFiles = (limit: number): FileWording => ({
  rule: "archive-too-large",
  message: `The archive holds more than ${limit} files, the most that is kept in memory.`,
  wayOut:
    "Unpack it yourself with `tar -xf` beside the archive and run again: unpacked files are read from disk.",
});

export const archiveBroken = (reason: string): FileWording => ({
  rule: "archive-broken",
  message: `The archive is damaged or not whole (${reason}); nothing in it was used.`,
  wayOut: "Fetch it again and compare its size or checksum with the one its makers give.",
});

export const namesCollide = (path: string): FileWording => ({
  rule: "names-collide",
  message: `Two files are called ${quote(path)} once their letters are written the same way (Unicode NFC).`,
  wayOut: "Rename one of them.",
});

export const textHasNul = (offset: number): FileWording => ({
  rule: "text-nul",
  message: `Byte ${offset} is NUL, which no text file holds.`,
  wayOut: "Save the file as UTF-8 text, or fetch it again if it was damaged.",
});

export const textEncodingUnknown = (): FileWording => ({
  rule: "text-encoding-unknown",
  message: "The file is not UTF-8, UTF-16 with a byte order mark, Shift_JIS or EUC-JP.",
  wayOut: "Save it as UTF-8.",
});

export const textEncodingGuessed = (encoding: string): FileWording => ({
  rule: "text-encoding-guessed",
  message: `The file is not UTF-8; it was read as ${encoding}.`,
  wayOut: "If any character looks wrong, save the file as UTF-8.",
});

function quote(value: string): string {
  return JSON.stringify(value.length > 120 ? `${value.slice(0, 117)}…` : value);
}

function megabytes(bytes: number): string {
  return bytes >= 1e6 ? `${Math.round(bytes / 1e6)} MB` : `${bytes} bytes`;
}
