export interface ChoiceOption {
  readonly value: string;
  readonly label: string;
}

/** One thing a reader can choose. Its value stands in the page's address unless it is the initial one. */
export interface Choice {
  readonly name: string;
  readonly label: string;
  /** `several` joins its values with commas, in the order of the options; `text` and `number` are typed and have no options. */
  readonly kind: "one" | "several" | "text" | "number";
  readonly options: readonly ChoiceOption[];
  readonly initial: string;
  /** Form of the page that shows it; left out: the main one. */
  readonly part?: string;
  /** Letters of a text that count; default: enough for any word and any token. */
  readonly longest?: number;
}

/** Enough for any word and any token; more in an address is a mistake. */
const longestText = 200;

/** Of an unknown value no more is repeated. */
const longestShown = 40;

/** A choice as it stands, in words. */
export interface ChosenWords {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  /** As the choice's own. */
  readonly part: string | undefined;
}

const onPage: Choices[] = [];

/** All choices of the page, in the order they were made. */
export function pageChoices(): readonly Choices[] {
  return onPage;
}

type Values = Readonly<Record<string, string>>;

function valid(choice: Choice, value: string | undefined): string {
  if (value === undefined) return choice.initial;
  if (choice.kind === "text") return value.trim().slice(0, choice.longest ?? longestText);
  if (choice.kind === "number")
    return Number.isFinite(Number.parseFloat(value)) ? String(Number.parseFloat(value)) : "";
  const known = choice.options.map((option) => option.value);
  if (choice.kind === "one") return known.includes(value) ? value : choice.initial;
  const wanted = value.split(",");
  const kept = known.filter((name) => wanted.includes(name));
  return kept.length === 0 ? choice.initial : kept.join(",");
}

/** What an address asks for that is none of a choice's options. */
export interface UnknownValue {
  readonly label: string;
  readonly value: string;
  /** The options that count instead, by their labels. */
  readonly instead: string;
  readonly part: string | undefined;
}

/** Of the values wanted those that the choice does not know. */
function unknownIn({ kind, options }: Choice, wanted: string | undefined): string[] {
  if (wanted === undefined || wanted === "" || kind === "text") return [];
  if (kind === "number") return Number.isFinite(Number.parseFloat(wanted)) ? [] : [wanted];
  const values = kind === "one" ? [wanted] : wanted.split(",").filter(Boolean);
  return values.filter((value) => !options.some((option) => option.value === value));
}

/**
 * What the reader has chosen. It lives in the address: a view can be shared, and the browser's back works.
 * Which options there are may depend on what is chosen (`define`); a value that is no option counts as not chosen.
 */
export class Choices {
  readonly #define: (values: Values) => readonly Choice[];
  readonly #listeners: (() => void)[] = [];
  #values: Record<string, string> = {};
  #list: readonly Choice[] = [];
  #unknown: readonly UnknownValue[] = [];

  constructor(define: (values: Values) => readonly Choice[]) {
    this.#define = define;
    onPage.push(this);
    this.#take(Object.fromEntries(new URLSearchParams(location.search)));
    addEventListener("popstate", () => {
      const before = JSON.stringify(this.#values);
      this.#take(Object.fromEntries(new URLSearchParams(location.search)));
      if (JSON.stringify(this.#values) !== before) this.#tell();
    });
  }

  get list(): readonly Choice[] {
    return this.#list;
  }

  get(name: string): string {
    return this.#values[name] ?? "";
  }

  several(name: string): string[] {
    return this.get(name).split(",").filter(Boolean);
  }

  /** What is chosen, in the words of the form. */
  get words(): ChosenWords[] {
    const words = this.#list.map(({ name, label, options, part }) => {
      const chosen = this.get(name);
      const values = options.filter(({ value }) => value === chosen || chosen.split(",").includes(value));
      const value = options.length === 0 ? chosen : values.map((option) => option.label).join(", ");
      return { name, label, value, part };
    });
    return words.filter(({ value }) => value !== "");
  }

  /** Values last asked for that are no options: of the address, or of another set of the corpus. */
  get unknown(): readonly UnknownValue[] {
    return this.#unknown;
  }

  get isInitial(): boolean {
    return this.#list.every((choice) => this.get(choice.name) === choice.initial);
  }

  set(changes: Values): void {
    this.#take({ ...this.#values, ...changes });
    history.pushState(null, "", this.#address());
    this.#tell();
  }

  reset(): void {
    this.#take({});
    history.pushState(null, "", this.#address());
    this.#tell();
  }

  onChange(listener: () => void): void {
    this.#listeners.push(listener);
  }

  #take(wanted: Values): void {
    this.#list = this.#define(wanted);
    this.#values = Object.fromEntries(
      this.#list.map((choice) => [choice.name, valid(choice, wanted[choice.name])]),
    );
    this.#unknown = this.#list.flatMap((choice) => {
      const chosen = this.several(choice.name);
      const labels = choice.options.filter(({ value }) => chosen.includes(value)).map(({ label }) => label);
      return unknownIn(choice, wanted[choice.name]).map((value) => ({
        ...{ label: choice.label, value: value.slice(0, longestShown), part: choice.part },
        instead: labels.length === 0 ? this.get(choice.name) : labels.join(", "),
      }));
    });
  }

  #address(): string {
    const query = new URLSearchParams();
    for (const { name, initial } of this.#list)
      if (this.get(name) !== initial) query.set(name, this.get(name));
    const text = query.toString().replaceAll("%2C", ",").replaceAll("%2F", "/");
    return `${location.pathname}${text === "" ? "" : `?${text}`}${location.hash}`;
  }

  /** Redraws at once; the time it takes is on the page's performance timeline as `redraw`. */
  #tell(): void {
    const start = performance.now();
    for (const listener of this.#listeners) listener();
    performance.measure("redraw", { start, end: performance.now() });
  }
}
