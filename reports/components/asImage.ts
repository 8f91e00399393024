/**
 * Makes a plot one image to a screen reader, which hears `alternative` instead of its parts.
 * The plot library names its groups by an attribute that only elements with a role may have: it becomes `data-part`.
 */
export function asImage<T extends SVGElement | HTMLElement>(picture: T, alternative: string): T {
  for (const group of picture.querySelectorAll("g[aria-label]")) {
    group.setAttribute("data-part", group.getAttribute("aria-label") ?? "");
    group.removeAttribute("aria-label");
  }
  picture.setAttribute("role", "img");
  picture.setAttribute("aria-label", alternative);
  return picture;
}
