import { element } from "../element.ts";

/** Hands the reader a file. */
export function saveFile(name: string, content: Blob): void {
  const url = URL.createObjectURL(content);
  element("a", { href: url, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
