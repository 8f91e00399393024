import { readFile, realpath } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import path from "node:path";
import sirv from "sirv";
import { hostNotAllowed, notASite, portTaken } from "../messages/publish.ts";
import { UserError } from "../messages/userError.ts";
import type { AudioFolders } from "./clips.ts";
import { contentPolicy } from "./contentPolicy.ts";
import { isByOwnName, isLocalRequest, isLoopback } from "./isLocalRequest.ts";
import { openLocalRoute } from "./localRoute.ts";
import { isSite } from "./outputFolder.ts";
import { refuse, sendBytes } from "./sendBytes.ts";

export interface ServeOptions {
  /** Folder of a built report. */
  readonly site: string;
  /** Default 0: any free port. */
  readonly port?: number;
  /** Default 127.0.0.1: only this machine can open the report. */
  readonly host?: string;
  /**
   * Results the report was built from, and folders of their datasets by id: whoever sits at this machine then sees all
   * single sounds and hears all recordings. Others never do, whatever `host` is.
   */
  readonly local?: { readonly results: string; readonly folders: AudioFolders } | null;
}

export interface Served {
  /** Address to open, ending in `/`. */
  readonly url: string;
  close(): Promise<void>;
}

/** True for a request path that tries to leave the folder or hides something: refused before any file is looked up. */
export function isEscape(url: string): boolean {
  let decoded: string;
  try {
    decoded = decodeURIComponent(url.split(/[?#]/, 1)[0]!);
  } catch {
    return true;
  }
  return /\0|\\/.test(decoded) || decoded.split("/").some((part) => part.startsWith("."));
}

/**
 * The page that a clean address stands for, empty for any other file: `/length` is `length.html`, `/` is `index.html`.
 * `moved`: its own address, where it was asked for by another, by which its links would lead astray: `/length/`, `/ja`.
 */
async function pageOf(site: string, url: string): Promise<{ page: string; moved: string | null }> {
  const [, address = "", query = ""] = /^([^?#]*)(.*)$/s.exec(url) ?? [];
  const bare = address.replace(/(?:\/|%2f)+$/i, "");
  const read = (name: string) => readFile(path.join(site, name), "utf8").catch(() => "");
  const name = decodeURIComponent(bare);
  for (const [file, own] of [
    [name.endsWith(".html") ? name : `${name}.html`, bare],
    [`${name}/index.html`, `${bare}/`],
  ] as const) {
    const page = await read(file);
    if (page !== "") return { page, moved: own === address ? null : own.replace(/^\/*/, "/") + query };
  }
  return { page: "", moved: null };
}

/** Whether the file an address stands for lies in the site itself, and no link in it leads elsewhere. */
async function liesInSite(site: string, url: string): Promise<boolean> {
  const name = path.join(site, decodeURIComponent(url.split(/[?#]/, 1)[0]!));
  for (const file of [name, `${name.replace(/\/$/, "")}.html`, path.join(name, "index.html")]) {
    const real = await realpath(file).catch(() => null);
    if (real !== null && real !== site && !real.startsWith(site + path.sep)) return false;
  }
  return true;
}

/** Pages are told of which datasets they may ask for recordings. */
function withLocal(page: string, datasets: readonly string[]): string {
  const content = JSON.stringify(datasets).replaceAll("&", "&amp;").replaceAll("'", "&#39;");
  return page.replace("</head>", () => `<meta name="morascope-local" content='${content}'></head>`);
}

/**
 * Whether a range is one stretch from its first to its last byte or the end. The library that sends files takes others
 * for what they are not, or breaks off; a server may answer them with the whole (RFC 9110, section 14.2).
 */
function isPlainRange(range: string | undefined): boolean {
  const [, first, last = ""] = /^bytes=(\d{1,15})-(\d{1,15})?$/.exec(range ?? "") ?? [];
  return first !== undefined && (last === "" || Number(first) <= Number(last));
}

function listen(server: Server, port: number, host: string): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", (error: NodeJS.ErrnoException) => {
      const message = error.code === "EADDRINUSE" ? portTaken(port) : hostNotAllowed(host, port);
      reject(new UserError(message));
    });
    server.listen(port, host, () => resolve((server.address() as { port: number }).port));
  });
}

/** Serves a built report with clean addresses and byte ranges (for audio) until it is closed. */
export async function serve({
  site,
  port = 0,
  host = "127.0.0.1",
  local = null,
}: ServeOptions): Promise<Served> {
  if (!(await isSite(site))) throw new UserError(notASite(site));
  const folder = await realpath(site);
  const route = local === null ? null : await openLocalRoute(local.results, local.folders);
  const files = sirv(folder, { extensions: ["html"], etag: true, dev: true });
  const answer = async (request: IncomingMessage, response: ServerResponse) => {
    const url = request.url ?? "/";
    response.setHeader("x-content-type-options", "nosniff");
    response.setHeader("referrer-policy", "no-referrer");
    response.setHeader("cross-origin-resource-policy", "same-origin");
    response.setHeader("content-security-policy", `${contentPolicy("")}; frame-ancestors 'none'`);
    if (isLoopback(host) && !isByOwnName(request))
      return refuse(response, 403, "This report is served to this machine only, by its own name.");
    if (request.method !== "GET" && request.method !== "HEAD")
      return refuse(response, 405, "Only reading is possible.");
    if (isEscape(url) || !(await liesInSite(folder, url)))
      return refuse(response, 400, "This address leaves the report.");
    const { page, moved } = await pageOf(folder, url);
    if (moved !== null) return void response.writeHead(302, { location: moved }).end();
    response.setHeader("content-security-policy", `${contentPolicy(page)}; frame-ancestors 'none'`);
    const address = url.split(/[?#]/, 1)[0]!;
    if (route !== null && isLocalRequest(request)) {
      if (address.startsWith("/local/")) return route.answer(request, response);
      if (page !== "")
        return sendBytes(
          request,
          response,
          Buffer.from(withLocal(page, route.datasets)),
          "text/html; charset=utf-8",
        );
    }
    if (!isPlainRange(request.headers.range)) delete request.headers.range;
    files(request, response, () => refuse(response, 404, "No such page in this report."));
  };
  const server = createServer((request, response) => {
    answer(request, response).catch((error) => {
      if (response.headersSent) response.destroy();
      else refuse(response, 500, error instanceof Error ? error.message : String(error));
    });
  });
  const taken = await listen(server, port, host);
  const shown = host.includes(":") ? `[${host}]` : host;
  return {
    url: `http://${shown}:${taken}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => void (route?.close() ?? Promise.resolve()).then(resolve));
        server.closeAllConnections();
      }),
  };
}
