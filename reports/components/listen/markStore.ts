import { csvFormatRows } from "d3";

export const markDecisions = ["voiced", "devoiced", "cannot tell"] as const;
export type MarkDecision = (typeof markDecisions)[number];

/** A reader's mark on one vowel, found again by utterance, phone and time. */
export interface ReaderMark {
  readonly utterance: string;
  readonly phone: string;
  readonly startMs: number;
  readonly endMs: number;
  readonly decision: MarkDecision;
  /** ISO 8601. */
  readonly markedAt: string;
}

export type MarkedSound = Pick<ReaderMark, "utterance" | "phone" | "startMs" | "endMs">;

/** Columns of the file of marks, which `morascope run --corrections` reads. */
export const markColumns = [
  ...(["dataset", "utterance", "startMs", "endMs", "phone", "decision", "markedAt"] as const),
] as const;

/** Marks on one dataset in one version, kept in this browser. */
export class MarkStore {
  readonly #key: string;
  readonly #dataset: string;
  readonly #marks = new Map<string, ReaderMark>();
  /** False where the browser keeps nothing between visits. */
  kept = true;

  constructor(dataset: string, version: string | null) {
    this.#dataset = dataset;
    this.#key = `morascope-marks ${JSON.stringify([dataset, version])}`;
    try {
      const marks = JSON.parse(localStorage.getItem(this.#key) ?? "[]") as ReaderMark[];
      for (const mark of marks) if (isMark(mark)) this.#marks.set(soundKey(mark), mark);
    } catch {
      this.kept = false;
    }
  }

  get size(): number {
    return this.#marks.size;
  }

  get(sound: MarkedSound): MarkDecision | null {
    return this.#marks.get(soundKey(sound))?.decision ?? null;
  }

  /** Null takes the mark back. */
  set(sound: MarkedSound, decision: MarkDecision | null): void {
    if (decision === null) this.#marks.delete(soundKey(sound));
    else this.#marks.set(soundKey(sound), { ...sound, decision, markedAt: new Date().toISOString() });
    this.#keep();
  }

  forget(): void {
    this.#marks.clear();
    this.#keep();
  }

  /** The marks as a file: UTF-8 with byte order mark, no text that a spreadsheet would run as a formula. */
  toCsv(): string {
    const rows = [...this.#marks.values()].map((mark) => {
      const { utterance, phone, startMs, endMs, decision, markedAt } = mark;
      return [this.#dataset, utterance, startMs.toFixed(1), endMs.toFixed(1), phone, decision, markedAt].map(
        inert,
      );
    });
    return `\ufeff${csvFormatRows([[...markColumns], ...rows])}\n`;
  }

  #keep(): void {
    try {
      localStorage.setItem(this.#key, JSON.stringify([...this.#marks.values()]));
    } catch {
      this.kept = false;
    }
  }
}

function soundKey({ utterance, phone, startMs }: MarkedSound): string {
  return JSON.stringify([utterance, phone, startMs.toFixed(1)]);
}

function isMark(mark: ReaderMark): boolean {
  return (
    typeof mark.utterance === "string" &&
    typeof mark.phone === "string" &&
    Number.isFinite(mark.startMs) &&
    Number.isFinite(mark.endMs) &&
    markDecisions.includes(mark.decision) &&
    typeof mark.markedAt === "string"
  );
}

function inert(field: string): string {
  return /^[=+\-@\t\r]/.test(field) ? `'${field}` : field;
}
