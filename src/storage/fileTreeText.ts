import { readFileSync } from "node:fs";
import encodingJapanese from "encoding-japanese";
import { type FileWording, fileUnreadable, textEncodingUnknown, textHasNul } from "../messages/fileTree.ts";
import { UserError } from "../messages/userError.ts";

export type TextEncoding = "UTF-8" | "UTF-16LE" | "UTF-16BE" | "Shift_JIS" | "EUC-JP" | "ISO-2022-JP";

/** The text of a file, line ends as `\n`, without byte order mark; or why it is none. */
export type DecodedText =
  | { readonly text: string; readonly encoding: TextEncoding; readonly refused: null }
  | { readonly text: null; readonly encoding: null; readonly refused: FileWording };

const utf8 = new TextDecoder("utf-8", { fatal: true });

/** Decodes UTF-8 and UTF-16 by byte order mark, then UTF-8, then the Japanese encodings; refuses NUL and the rest. */
export function decodeText(bytes: Uint8Array): DecodedText {
  const marked =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? "UTF-16LE"
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? "UTF-16BE"
        : null;
  if (marked !== null) return decodeAs(bytes, marked) ?? refuse(textEncodingUnknown());
  const nul = bytes.indexOf(0);
  if (nul >= 0) return refuse(textHasNul(nul));
  const escaped = bytes.includes(0x1b) && encodingJapanese.detect(bytes, "JIS");
  if (escaped) return decodeAs(bytes, "ISO-2022-JP") ?? refuse(textEncodingUnknown());
  try {
    return accept(utf8.decode(bytes), "UTF-8");
  } catch {
    return decodeJapanese(bytes);
  }
}

function decodeJapanese(bytes: Uint8Array): DecodedText {
  const detected = encodingJapanese.detect(bytes, ["SJIS", "EUCJP"]);
  const order: TextEncoding[] = detected === "EUCJP" ? ["EUC-JP", "Shift_JIS"] : ["Shift_JIS", "EUC-JP"];
  for (const encoding of order) {
    const decoded = decodeAs(bytes, encoding);
    if (decoded !== null) return decoded;
  }
  return refuse(textEncodingUnknown());
}

function decodeAs(bytes: Uint8Array, encoding: TextEncoding): DecodedText | null {
  try {
    const text = new TextDecoder(encoding.toLowerCase(), { fatal: true }).decode(bytes);
    return text.includes("\0") ? refuse(textHasNul(text.indexOf("\0"))) : accept(text, encoding);
  } catch {
    return null;
  }
}

function accept(text: string, encoding: TextEncoding): DecodedText {
  return { text: text.includes("\r") ? text.replace(/\r\n?/g, "\n") : text, encoding, refused: null };
}

function refuse(refused: FileWording): DecodedText {
  return { text: null, encoding: null, refused };
}

/** Text of `bytes`; throws UserError with `shownPath`, the rule and the way out when it is none. */
export function decodeTextOrThrow(bytes: Uint8Array, shownPath: string): string {
  const decoded = decodeText(bytes);
  if (decoded.refused !== null)
    throw new UserError(`${shownPath}: ${decoded.refused.message} ${decoded.refused.wayOut}`, 1);
  return decoded.text;
}

/** Text of one file anywhere on disk (a `dataset.json` kept elsewhere); throws UserError when it cannot be read. */
export function readTextFile(path: string): string {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    throw new UserError(fileUnreadable(path, error instanceof Error ? error.message : String(error)));
  }
  return decodeTextOrThrow(bytes, path);
}
