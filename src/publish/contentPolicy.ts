import { createHash } from "node:crypto";
import { htmlElements } from "./htmlElements.ts";

/**
 * The content security policy of a page: its own inline scripts are allowed by their hash, and nothing may be loaded
 * from, or sent to, another host.
 */
export function contentPolicy(html: string): string {
  const hashes = htmlElements(html)
    .filter(({ name, attributes }) => name === "script" && !attributes.has("src"))
    .map(({ content }) => `'sha256-${createHash("sha256").update(content).digest("base64")}'`);
  return [
    "default-src 'none'",
    ["script-src 'self'", ...new Set(hashes)].join(" "),
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "media-src 'self' blob:",
    "connect-src 'self'",
    "base-uri 'self'",
    "form-action 'none'",
  ].join("; ");
}
