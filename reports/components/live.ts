import type { Choices } from "./choices.ts";
import { element } from "./element.ts";

/** Key of the focused control inside `host`, so that the same control has the focus after a redraw. */
function focusedKey(host: HTMLElement): string | null {
  const focused = document.activeElement;
  return focused !== null && host.contains(focused) ? focused.getAttribute("data-key") : null;
}

/**
 * A place on the page that `draw` fills, again at once whenever a choice changes and when the width does.
 * What the reader has unfolded or focused stays so.
 */
export function live(choices: Choices, draw: (widthPx: number) => Node): HTMLElement {
  const host = element("div", { class: "live" });
  let drawnWidth = 0;
  const redraw = () => {
    const open = new Set([...host.querySelectorAll("details[open]")].map((details) => details.className));
    const key = focusedKey(host);
    host.replaceChildren(draw(drawnWidth));
    for (const details of host.querySelectorAll("details")) details.open = open.has(details.className);
    if (key !== null) host.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus();
  };
  choices.onChange(() => drawnWidth > 0 && redraw());
  new ResizeObserver(() => {
    const width = Math.floor(host.clientWidth);
    if (width === 0 || width === drawnWidth) return;
    drawnWidth = width;
    redraw();
  }).observe(host);
  return host;
}
