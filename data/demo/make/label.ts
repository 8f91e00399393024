/** One phone of a full-context label as Open JTalk writes it. */
export interface LabelPhone {
  readonly phone: string;
  readonly durationMs: number;
  /** Everything after the five phones, kept as it is. */
  readonly context: string;
  /** The same for all phones of one mora, different for its neighbours; null in a pause. */
  readonly mora: string | null;
  /** The same for all phones of one accent phrase, different for its neighbours; null in a pause. */
  readonly phrase: string | null;
  /** Mora after which the pitch falls, counted from 1; the phrase's last mora also stands for no fall. */
  readonly nucleus: number;
}

const pattern =
  /^(\d+) (\d+) [^^]+\^[^-]+-([^+]+)\+[^=]+=[^/]+(\/A:[^+]+\+([^+]+)\+.*(\/F:[^#]+_(\d+|xx)#.*)\/J:.*)$/;

/** Reads one line. Throws when it is no full-context label. */
export function parseLabel(line: string): LabelPhone {
  const match = pattern.exec(line);
  if (match === null) throw new Error(`no full-context label: ${line}`);
  const [, start, end, phone, context, position, phrase, nucleus] = match as unknown as [string, ...string[]];
  const pause = position === "xx";
  return {
    phone: phone!,
    durationMs: (Number(end) - Number(start)) / 10_000,
    context: context!,
    mora: pause ? null : `${position}${phrase}`,
    phrase: pause ? null : phrase!,
    nucleus: pause ? 0 : Number(nucleus),
  };
}

/** A phone to be spoken: its name after all decisions, its context, its length. */
export interface SpokenPhone {
  readonly phone: string;
  readonly context: string;
  readonly durationMs: number;
}

/** Full-context labels with times in 100 ns units, for a synthesiser that takes durations from them. */
export function formatLabels(phones: readonly SpokenPhone[]): string {
  let endMs = 0;
  const rows = phones.map(({ context, durationMs }, index) => {
    const near = (offset: number) => phones[index + offset]?.phone ?? "xx";
    const startMs = endMs;
    endMs += durationMs;
    const names = `${near(-2)}^${near(-1)}-${near(0)}+${near(1)}=${near(2)}`;
    return `${startMs * 10_000} ${endMs * 10_000} ${names}${context}\n`;
  });
  return rows.join("");
}
