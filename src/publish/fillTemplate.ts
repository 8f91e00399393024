import type { Html } from "./html.ts";

/** Replaces each `{{name}}` of a template. Throws when a name is unknown: a page must not show its own scaffolding. */
export function fillTemplate(template: string, parts: Readonly<Record<string, Html>>): string {
  return template.replace(/\{\{([\w-]+)\}\}/g, (_, name: string) => {
    const part = parts[name];
    if (part === undefined) throw new Error(`the page template asks for an unknown part: ${name}`);
    return part.markup;
  });
}
