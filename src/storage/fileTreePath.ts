import path from "node:path";

/** Lists that a file system or an archiver leaves behind; no dataset keeps anything in them. */
export function isHiddenPath(relativePath: string): boolean {
  return relativePath.split("/").some((part) => part.startsWith(".") || part === "__MACOSX");
}

/**
 * A path as written in a list or an archive, made relative, `/` separated and NFC; null when it is absolute, empty
 * or leaves the folder. `./a/../b` is `b`; a backslash counts as a separator, as it does on Windows.
 */
export function insidePath(written: string): string | null {
  const slashed = written.normalize("NFC").replaceAll("\\", "/");
  if (slashed.startsWith("/") || /^[A-Za-z]:/.test(slashed) || slashed.includes("\0")) return null;
  const normal = path.posix.normalize(slashed).replace(/\/$/, "");
  return normal === "." || normal === "" || normal === ".." || normal.startsWith("../") ? null : normal;
}

/** Order by Unicode code point: the same on every machine, whatever its locale. */
export function compareCodePoints(a: string, b: string): number {
  const length = Math.min(a.length, b.length);
  for (let index = 0; index < length; index++) {
    const left = a.charCodeAt(index);
    const right = b.charCodeAt(index);
    if (left !== right) return codePointRank(left) - codePointRank(right);
  }
  return a.length - b.length;
}

/** Surrogates stand for code points above the BMP, so they sort after U+E000…U+FFFF. */
function codePointRank(unit: number): number {
  return unit >= 0xd800 && unit <= 0xdfff ? unit + 0x10000 : unit;
}
