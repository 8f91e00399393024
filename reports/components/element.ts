type Child = Node | string | null | false;
type Attributes = Readonly<Record<string, string | number | boolean | null | ((event: Event) => void)>>;

/** An HTML element; texts become text nodes, so nothing in the data is ever read as markup. */
export function element<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") made.addEventListener(name, value);
    else if (value !== null && value !== false) made.setAttribute(name, value === true ? "" : String(value));
  }
  made.append(...children.filter((child) => child !== null && child !== false));
  return made;
}
