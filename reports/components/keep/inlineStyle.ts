/** What an SVG program other than a browser must find in the file itself, with the value that needs no saying. */
const inherited = [
  "fill",
  "fill-opacity",
  "fill-rule",
  "stroke",
  "stroke-width",
  "stroke-opacity",
  "stroke-dasharray",
  "stroke-linecap",
  "stroke-linejoin",
  "font-family",
  "font-size",
  "font-weight",
  "font-style",
  "text-anchor",
  "letter-spacing",
  "visibility",
  "paint-order",
] as const;
const own = { opacity: "1", "dominant-baseline": "auto", "stop-color": "rgb(0, 0, 0)" } as const;

let pixel: CanvasRenderingContext2D | null = null;
const plainColours = new Map<string, string>();

/** A colour in a notation that every SVG program reads, whatever the browser computed with (`oklab(…)`). */
function plainColour(value: string): string {
  if (!/^(?:color|oklab|oklch|lab|lch|hwb|rgba)\(/.test(value)) return value;
  const known = plainColours.get(value);
  if (known !== undefined) return known;
  const canvas = document.createElement("canvas");
  canvas.width = canvas.height = 1;
  pixel ??= canvas.getContext("2d", { willReadFrequently: true })!;
  pixel.clearRect(0, 0, 1, 1);
  pixel.fillStyle = value;
  pixel.fillRect(0, 0, 1, 1);
  const [red, green, blue, alpha] = pixel.getImageData(0, 0, 1, 1).data;
  const colour =
    alpha === 255
      ? `rgb(${red}, ${green}, ${blue})`
      : `rgba(${red}, ${green}, ${blue}, ${(alpha! / 255).toFixed(3)})`;
  plainColours.set(value, colour);
  return colour;
}

const idUse = /url\(["']?#([^"')]+)["']?\)/;

/** Ids that a value or a link of the drawing refers to. */
export function usedIds(root: Element): Set<string> {
  const ids = new Set<string>();
  for (const part of [root, ...root.querySelectorAll("*")])
    for (const { name, value } of part.attributes) {
      const found =
        idUse.exec(value)?.[1] ?? (/href$/.test(name) && value.startsWith("#") ? value.slice(1) : null);
      if (found !== null) ids.add(found);
    }
  return ids;
}

/**
 * Writes into `copy` how the page's style sheets make `shown` look, part by part, so that it looks the same without
 * them. Both must have the same parts; what belongs to the page alone (classes, roles, keys) is taken off.
 */
export function inlineStyle(shown: Element, copy: Element): void {
  const pairs: [Element, Element, CSSStyleDeclaration | null][] = [[shown, copy, null]];
  const useless: Element[] = [];
  while (pairs.length > 0) {
    const [from, to, outer] = pairs.pop()!;
    if (to.tagName === "style") {
      useless.push(to);
      continue;
    }
    const style = getComputedStyle(from);
    if (
      style.display === "none" &&
      !/^(?:defs|pattern|clipPath|mask|marker|linearGradient)$/.test(to.tagName)
    ) {
      if (to.tagName !== "title") useless.push(to);
      continue;
    }
    for (const { name } of [...to.attributes])
      if (/^(?:class|style|role|tabindex|aria-|data-)/.test(name)) to.removeAttribute(name);
    for (const name of inherited) {
      const value = plainColour(style.getPropertyValue(name));
      if (outer === null || plainColour(outer.getPropertyValue(name)) !== value) to.setAttribute(name, value);
      else to.removeAttribute(name);
    }
    for (const [name, plain] of Object.entries(own)) {
      const value = style.getPropertyValue(name);
      if (value !== plain && value !== "") to.setAttribute(name, plainColour(value));
    }
    for (const [i, child] of [...from.children].entries()) pairs.push([child, to.children[i]!, style]);
  }
  for (const part of useless) part.remove();
}
