import type { Choices } from "./choices.ts";
import { element } from "./element.ts";

/** Key of the focused control inside `host`, so that the same control has the focus after a redraw. */
function focusedKey(host: HTMLElement): string | null {
  const focused = document.activeElement;
  return focused !== null && host.contains(focused) ? focused.getAttribute("data-key") : null;
}

function fill(host: HTMLElement, content: Node): void {
  const open = new Set([...host.querySelectorAll("details[open]")].map((details) => details.className));
  const key = focusedKey(host);
  host.replaceChildren(content);
  for (const details of host.querySelectorAll("details")) details.open = open.has(details.className);
  if (key !== null) host.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`)?.focus();
}

const waiting = new Map<HTMLElement, () => void>();

/** Draws what is out of sight, one place after another, once what is in sight stands. */
function drawWaiting(): void {
  const [next] = waiting;
  if (next === undefined) return;
  const [host, redraw] = next;
  waiting.delete(host);
  const start = performance.now();
  redraw();
  performance.measure("redraw-out-of-sight", { start, end: performance.now() });
  setTimeout(drawWaiting);
}

/**
 * A place on the page that `draw` fills, again whenever a choice changes and when the width does: at once where it can
 * be seen, right after where it cannot (`data-waiting` until then). What the reader has unfolded or focused stays so.
 */
export function live(choices: Choices, draw: (widthPx: number) => Node): HTMLElement {
  const host = element("div", { class: "live" });
  let drawnWidth = 0;
  let inSight = true;
  const redraw = () => {
    host.removeAttribute("data-waiting");
    fill(host, draw(drawnWidth));
  };
  choices.onChange(() => {
    if (drawnWidth === 0) return;
    if (inSight) return redraw();
    host.setAttribute("data-waiting", "");
    if (waiting.size === 0) setTimeout(drawWaiting);
    waiting.set(host, redraw);
  });
  new IntersectionObserver(
    (entries) => {
      inSight = entries.at(-1)!.isIntersecting;
    },
    { rootMargin: "25%" },
  ).observe(host);
  new ResizeObserver(() => {
    const width = Math.floor(host.clientWidth);
    if (width === 0 || width === drawnWidth) return;
    drawnWidth = width;
    redraw();
  }).observe(host);
  return host;
}
