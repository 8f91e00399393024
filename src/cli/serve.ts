import { type Command, InvalidArgumentError } from "commander";
import open from "open";
import { portInvalid, servedAt, servedToNetwork } from "../messages/publish.ts";
import { hasDesktop } from "../publish/hasDesktop.ts";
import { type Served, serve } from "../publish/serve.ts";

const loopback = ["127.0.0.1", "::1", "localhost"];

function portNumber(text: string): number {
  const port = Number(text);
  if (!/^\d+$/.test(text) || port > 65535) throw new InvalidArgumentError(portInvalid(text));
  return port;
}

/** Serves a built report, prints its address, and opens it where there is a desktop. It runs until it is stopped. */
export async function openSite(
  site: string,
  port: number,
  host = "127.0.0.1",
  browser = true,
): Promise<Served> {
  const served = await serve({ site, port, host });
  if (!loopback.includes(host)) process.stderr.write(`${servedToNetwork(host)}\n`);
  process.stdout.write(servedAt(served.url));
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
    .description("Serves a built report on this machine only, until stopped with Ctrl+C.")
    .argument("<site>", "folder of the report")
    .option("--port <number>", "port to serve on (default: a free one)", portNumber, 0)
    .option(
      "--host <address>",
      "address to listen on; another than this machine’s own lets others in",
      "127.0.0.1",
    )
    .option("--no-open", "do not open a browser")
    .addHelpText("after", "\nExample:\n  morascope serve results/site\n")
    .action(async (site: string, flags: { port: number; host: string; open: boolean }) => {
      await openSite(site, flags.port, flags.host, flags.open);
    });
}
