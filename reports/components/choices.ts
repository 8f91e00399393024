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
}

/** Enough for any word and any token; more in an address is a mistake. */
const longestText = 200;

/** A choice as it stands, in words. */
export interface ChosenWords {
  readonly name: string;
  readonly label: string;
  readonly value: string;
}

const onPage: Choices[] = [];

/** All choices of the page, in the order they were made. */
export function pageChoices(): readonly Choices[] {
  return onPage;
}

type Values = Readonly<Record<string, string>>;

function valid(choice: Choice, value: string | undefined): string {
  if (value === undefined) return choice.initial;
  if (choice.kind === "text") return value.trim().slice(0, longestText);
  if (choice.kind === "number")
    return Number.isFinite(Number.parseFloat(value)) ? String(Number.parseFloat(value)) : "";
  const known = choice.options.map((option) => option.value);
  if (choice.kind === "one") return known.includes(value) ? value : choice.initial;
  const wanted = value.split(",");
  const kept = known.filter((name) => wanted.includes(name));
  return kept.length === 0 ? choice.initial : kept.join(",");
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

  constructor(define: (values: Values) => readonly Choice[]) {
    this.#define = define;
    onPage.push(this);
    this.#take(Object.fromEntries(new URLSearchParams(location.search)));
    addEventListener("popstate", () => {
      this.#take(Object.fromEntries(new URLSearchParams(location.search)));
      this.#tell();
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
    const words = this.#list.map(({ name, label, options }) => {
      const chosen = this.get(name);
      const values = options.filter(({ value }) => value === chosen || chosen.split(",").includes(value));
      const value = options.length === 0 ? chosen : values.map((option) => option.label).join(", ");
      return { name, label, value };
    });
    return words.filter(({ value }) => value !== "");
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
