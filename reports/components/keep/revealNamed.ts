/** How long pictures above may still push the named one down, in ms. */
const settlingMs = 4000;
const leaving = ["wheel", "touchstart", "keydown", "pointerdown"] as const;

let begun = false;

/**
 * Brings the figure that the address names into sight: figures are drawn after the browser has looked for it. It is
 * kept there while the pictures above it take their place, until the reader does something.
 */
export function revealNamed(figure: HTMLElement): void {
  if (begun || figure.id === "" || location.hash !== `#${figure.id}`) return;
  begun = true;
  const place = () => document.getElementById(figure.id);
  const show = () => {
    place()?.scrollIntoView();
    place()?.classList.add("named");
  };
  const watch = new ResizeObserver(show);
  const stop = () => {
    watch.disconnect();
    for (const event of leaving) removeEventListener(event, stop);
  };
  for (const event of leaving) addEventListener(event, stop, { passive: true });
  watch.observe(document.querySelector("main") ?? document.body);
  setTimeout(stop, settlingMs);
}
