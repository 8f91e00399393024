import { isMap, isScalar, LineCounter, parseDocument } from "yaml";
import { idDuplicate, lineNotUnderstood } from "../../messages/datasets.ts";
import { kanaReading, withoutAccent } from "../kanaReading.ts";
import { readListText } from "../readLines.ts";
import type { LayoutContext } from "./layout.ts";

export interface MarkedReading {
  /** As written, without the marks of start and end. */
  readonly marked: string;
  /** Plain katakana; null when it holds something else. */
  readonly reading: string | null;
  readonly file: string;
  readonly line: number;
}

export interface MarkedReadings {
  readonly readings: ReadonlyMap<string, MarkedReading>;
  readonly source: string | null;
  readonly files: readonly string[];
}

const fileName = /(^|\/)katakana\.ya?ml$/;

export function hasMarkedReadings({ index }: LayoutContext): string | null {
  return index.texts.find((path) => fileName.test(path)) ?? null;
}

/** Readings with accent marks from `katakana.yaml` files: `ID: ^…[…]…#…_…$`. A second reading of an id is reported. */
export function readMarkedReadings(context: LayoutContext): MarkedReadings {
  const files = context.index.texts.filter((path) => fileName.test(path));
  const readings = new Map<string, MarkedReading>();
  for (const file of files) readFile(context, file, readings);
  const source = readings.size === 0 ? null : `katakana with accent marks (${files.join(", ")})`;
  return { readings, source, files };
}

function readFile(context: LayoutContext, file: string, readings: Map<string, MarkedReading>): void {
  const text = readListText(context, file);
  if (text === null) return;
  const lineCounter = new LineCounter();
  const document = parseDocument(text, { lineCounter, schema: "failsafe", uniqueKeys: false });
  for (const { message, linePos } of document.errors)
    context.report(lineNotUnderstood(message.split("\n")[0]!, "YAML"), file, linePos?.[0].line ?? null);
  if (!isMap(document.contents)) return;
  for (const { key, value } of document.contents.items) {
    if (!isScalar(key) || !isScalar(value)) continue;
    const id = String(key.value);
    const line = lineCounter.linePos(key.range?.[0] ?? 0).line;
    const marked = String(value.value).replace(/^\^|\$$/g, "");
    const other = readings.get(id);
    if (other !== undefined) context.report(idDuplicate(id, other.file, other.line), file, line, id);
    else readings.set(id, { marked, reading: kanaReading(withoutAccent(marked)), file, line });
  }
}
