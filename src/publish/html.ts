const replacements: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
  $: "&#36;",
  "`": "&#96;",
  "{": "&#123;",
  "[": "&#91;", // begins a link or a picture in Markdown
};

/**
 * Text as it may stand in a page: markup is shown, not obeyed, and the framework finds no `${…}` to run.
 * Line breaks become spaces, so that the text cannot end the HTML block it stands in.
 */
export function escapeHtml(text: string): string {
  return text
    .replace(/[&<>"'$`{[]/g, (character) => replacements[character]!)
    .replace(/[\r\n\u2028\u2029]+/g, " ");
}

/** Markup that needs no escaping any more. */
export class Html {
  readonly markup: string;
  constructor(markup: string) {
    this.markup = markup;
  }
  toString(): string {
    return this.markup;
  }
}

export type HtmlValue = Html | string | number | null | undefined | false | readonly HtmlValue[];

function render(value: HtmlValue): string {
  if (value === null || value === undefined || value === false) return "";
  if (value instanceof Html) return value.markup;
  if (typeof value === "object") return value.map(render).join("");
  return escapeHtml(String(value));
}

/** Markup with its values escaped; null and false leave nothing, arrays are joined. All on one line. */
export function html(strings: TemplateStringsArray, ...values: readonly HtmlValue[]): Html {
  const fixed = strings.map((text) => text.replace(/\n\s*/g, ""));
  return new Html(fixed.map((text, i) => (i < values.length ? text + render(values[i]) : text)).join(""));
}
