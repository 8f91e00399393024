import { type DefaultTreeAdapterTypes, parse } from "parse5";

export interface HtmlElement {
  /** In lower case. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** What stands in a script or style; empty for every other element. */
  readonly content: string;
}

/** The elements of a page in order, as a browser reads it. Text in attributes and comments is none. */
export function htmlElements(html: string): HtmlElement[] {
  const elements: HtmlElement[] = [];
  const waiting: DefaultTreeAdapterTypes.Node[] = [parse(html)];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if ("attrs" in node)
      elements.push({
        name: node.tagName,
        attributes: new Map(node.attrs.map(({ name, value }) => [name, value])),
        content: /^(script|style)$/.test(node.tagName) ? textOf(node) : "",
      });
    if ("content" in node) waiting.push(node.content);
    if ("childNodes" in node) for (const child of [...node.childNodes].reverse()) waiting.push(child);
  }
  return elements;
}

function textOf({ childNodes }: DefaultTreeAdapterTypes.Element): string {
  return childNodes.map((child) => ("value" in child ? child.value : "")).join("");
}
