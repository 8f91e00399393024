import { element } from "../element.ts";

/** Where the browser's clipboard is closed to the page (a plain http address), the old way through a marked text field. */
function copyMarked(text: string): boolean {
  const field = element("textarea", { class: "spoken", "aria-hidden": "true", tabindex: -1 });
  field.value = text;
  const focused = document.activeElement as HTMLElement | null;
  document.body.append(field);
  field.select();
  const done = document.execCommand("copy");
  field.remove();
  focused?.focus();
  return done;
}

/** Copies a text; false where the browser does not let the page do so. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return copyMarked(text);
  }
}
