import encodingJapanese from "encoding-japanese";
import { expect, test } from "vitest";
import { textEncodingUnknown, textHasNul } from "../../../src/messages/fileTree.ts";
import { decodeText } from "../../../src/storage/fileTreeText.ts";

const sentence = "東京へ行きました。カタカナ、ひらがな。\n二行目です。\n";

test("decodeText reads UTF-8 with and without byte order mark, CRLF and lone CR as line ends", () => {
  const bytes = new TextEncoder().encode(sentence.replaceAll("\n", "\r\n"));
  expect(decodeText(bytes)).toEqual({ text: sentence, encoding: "UTF-8", refused: null });
  expect(decodeText(Uint8Array.of(0xef, 0xbb, 0xbf, ...bytes)).text).toBe(sentence);
  expect(decodeText(new TextEncoder().encode("a\rb")).text).toBe("a\nb");
  expect(decodeText(new Uint8Array(0)).text).toBe("");
});

test("decodeText reads UTF-16 by its byte order mark, both ways round", () => {
  const little = Buffer.from(`\ufeff${sentence}`, "utf16le");
  expect(decodeText(little)).toEqual({ text: sentence, encoding: "UTF-16LE", refused: null });
  expect(decodeText(Buffer.from(little).swap16())).toEqual({
    text: sentence,
    encoding: "UTF-16BE",
    refused: null,
  });
});

test.each([
  ["SJIS", "Shift_JIS"],
  ["EUCJP", "EUC-JP"],
  ["JIS", "ISO-2022-JP"],
] as const)("decodeText detects %s and says so", (to, encoding) => {
  const bytes = Uint8Array.from(
    encodingJapanese.convert(encodingJapanese.stringToCode(sentence), { to, from: "UNICODE" }),
  );
  expect(decodeText(bytes)).toEqual({ text: sentence, encoding, refused: null });
});

test("decodeText refuses NUL bytes with their place, and bytes that are no encoding", () => {
  expect(decodeText(Uint8Array.of(0x61, 0, 0x62)).refused).toEqual(textHasNul(1));
  expect(decodeText(Uint8Array.of(0x61, 0xff, 0xff, 0xff, 0x80)).refused).toEqual(textEncodingUnknown());
});
