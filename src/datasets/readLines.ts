import { fileEmpty } from "../messages/datasets.ts";
import { textEncodingGuessed } from "../messages/fileTree.ts";
import { decodeText } from "../storage/fileTreeText.ts";
import type { LayoutContext } from "./layouts/layout.ts";

export interface TextLine {
  readonly text: string;
  /** 1-based. */
  readonly line: number;
}

/**
 * The text of a list, NFC. Null when the file is empty or no text, which is reported; another encoding than UTF-8 is
 * reported and read.
 */
export function readListText({ tree, report }: LayoutContext, path: string): string | null {
  const decoded = decodeText(tree.read(path));
  if (decoded.refused !== null) {
    report({ ...decoded.refused, excluded: true }, path);
    return null;
  }
  if (decoded.text.trim() === "") {
    report(fileEmpty(), path);
    return null;
  }
  if (decoded.encoding !== "UTF-8")
    report({ ...textEncodingGuessed(decoded.encoding), excluded: false }, path);
  return decoded.text.normalize("NFC");
}

/** Lines that are not blank, with their numbers; none when the file cannot be read. */
export function readLines(context: LayoutContext, path: string): readonly TextLine[] {
  const text = readListText(context, path);
  if (text === null) return [];
  return text
    .split("\n")
    .flatMap((line, index) => (line.trim() === "" ? [] : [{ text: line.trim(), line: index + 1 }]));
}

/** First lines of a file, to recognise it by; none for what is no text. Reports nothing. */
export function peekLines(
  { tree }: Pick<LayoutContext, "tree">,
  path: string,
  count = 40,
): readonly string[] {
  const bytes = tree.readPart(path, 0, 1 << 16);
  const lastBreak = bytes.lastIndexOf(10);
  const whole = bytes.length < 1 << 16 || lastBreak < 0 ? bytes : bytes.subarray(0, lastBreak);
  const decoded = decodeText(whole);
  if (decoded.text === null) return [];
  return decoded.text
    .normalize("NFC")
    .split("\n")
    .filter((line) => line.trim() !== "")
    .slice(0, count);
}

/** Share of `lines` that `pattern` matches, 0 for none. */
export function shareMatching(lines: readonly string[], pattern: RegExp): number {
  return lines.length === 0 ? 0 : lines.filter((line) => pattern.test(line)).length / lines.length;
}
