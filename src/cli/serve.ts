import { type Command, InvalidArgumentError } from "commander";
import open from "open";
import { portInvalid, servedAt, servedToNetwork } from "../messages/publish.ts";
import type { AudioFolders } from "../publish/clips.ts";
import { hasDesktop } from "../publish/hasDesktop.ts";
import { isLoopback } from "../publish/isLocalRequest.ts";
import { type Served, serve } from "../publish/serve.ts";
import { audioFolders } from "./audioFolders.ts";
import { whatToServe } from "./whatToServe.ts";

interface ServeFlags {
  readonly port: number;
  readonly host: string;
  readonly open: boolean;
  readonly audio?: readonly string[];
}

export interface OpenOptions {
  readonly host?: string;
  readonly browser?: boolean;
  /** Folders of recordings, by dataset id. */
  readonly audio?: AudioFolders;
}

function portNumber(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65535) throw new InvalidArgumentError(portInvalid(text));
  return port;
}

/**
 * Serves a report, of a results folder with its recordings, prints its address, and opens it where there is a desktop.
 * It runs until it is stopped.
 */
export async function openSite(
  folder: string,
  port: number,
  { host = "127.0.0.1", browser = true, audio = {} }: OpenOptions = {},
): Promise<Served> {
  const { site, local, notes } = await whatToServe(folder, audio);
  const served = await serve({ site, port, host, local: local ?? null });
  if (!isLoopback(host)) process.stderr.write(`${servedToNetwork(host)}\n`);
  process.stdout.write(servedAt(served.url));
  for (const note of notes) process.stderr.write(note);
  if (browser && hasDesktop(process.platform, process.env)) {
    const opened = await open(served.url).catch(() => null);
    opened?.on("error", () => {}); // no browser to open: the address is printed
  }
  const stop = () => void served.close().then(() => process.exit());
  process.once("SIGINT", stop);
  process.once("SIGTERM", stop);
  return served;
}

export function registerServe(program: Command): void {
  program
    .command("serve")
    .summary("look at a report in the browser")
    .description(
      "Serves a report on this machine only, until stopped with Ctrl+C. Of a results folder all single sounds are shown, and their recordings played from the dataset’s folder, to whoever sits at this machine.",
    )
    .argument("<folder>", "results folder, or the folder of a report alone")
    .option("--audio <id=folder...>", "folders of datasets whose recordings have moved since the run")
    .option("--port <number>", "port to serve on (default: a free one)", portNumber, 0)
    .option(
      "--host <address>",
      "address to listen on; another than this machine’s own lets others in",
      "127.0.0.1",
    )
    .option("--no-open", "do not open a browser")
    .addHelpText("after", "\nExample:\n  morascope serve results\n")
    .action(async (folder: string, flags: ServeFlags) => {
      const { port, host, open: browser, audio = [] } = flags;
      await openSite(folder, port, { host, browser, audio: audioFolders(audio) });
    });
}
