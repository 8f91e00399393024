/** The wording of the pages in a language, as far as it is translated; what is missing is shown in English. */
export type Translation<T> = {
  readonly [K in keyof T]?: T[K] extends (...values: infer V) => infer R
    ? (...values: V) => R extends string ? string : R
    : T[K] extends readonly unknown[]
      ? T[K]
      : T[K] extends string
        ? string
        : Translation<T[K]>;
};

/** `base` with everything that `translation` gives in its place. Arrays and functions are taken whole. */
export function translated<T>(base: T, translation: Translation<T>): T {
  const merged: Record<string, unknown> = { ...(base as Record<string, unknown>) };
  for (const [name, value] of Object.entries(translation as Record<string, unknown>)) {
    if (value === undefined) continue;
    merged[name] =
      isGroup(value) && isGroup(merged[name]) ? translated<unknown>(merged[name], value as never) : value;
  }
  return merged as T;
}

/** Names, joined by dots, of the texts of `base` that `translation` lacks. */
export function untranslated<T>(base: T, translation: Translation<T>, prefix = ""): string[] {
  return Object.entries(base as Record<string, unknown>).flatMap(([name, value]) => {
    const given = (translation as Record<string, unknown> | undefined)?.[name];
    if (isGroup(value)) return untranslated<unknown>(value, (given ?? {}) as never, `${prefix}${name}.`);
    return given === undefined ? [`${prefix}${name}`] : [];
  });
}

function isGroup(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
