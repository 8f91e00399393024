import { createHash } from "node:crypto";

const inlineScript = /<script\b(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g;

/**
 * The content security policy of a page: its own inline scripts are allowed by their hash, and nothing may be loaded
 * from, or sent to, another host.
 */
export function contentPolicy(html: string): string {
  const hashes = [...html.matchAll(inlineScript)].map(
    (match) => `'sha256-${createHash("sha256").update(match[1]!).digest("base64")}'`,
  );
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
