import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

export interface Chromium {
  /** Null when there is none and none could be installed. */
  readonly path: string | null;
  readonly message: string;
}

const systemPaths = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/**
 * A Chromium for the page tests: the one named by MORASCOPE_CHROMIUM, else one of the system, else one that the
 * driver downloaded before; where there is none, the system's package is installed (as root on Debian), or the
 * driver's own download.
 */
export async function provideChromium(): Promise<Chromium> {
  const found = await findChromium();
  if (found !== null) return { path: found, message: `Browser for the page tests: ${found}` };
  if (existsSync("/usr/bin/apt-get") && process.getuid?.() === 0) {
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-noto-cjk"]);
  } else run("npx", ["--no-install", "playwright-core", "install", "chromium"]);
  const installed = await findChromium();
  if (installed !== null)
    return { path: installed, message: `Browser for the page tests, just installed: ${installed}` };
  return {
    path: null,
    message:
      "The page tests need Chromium; none was found and none could be installed. Install your system's Chromium, or set MORASCOPE_CHROMIUM to the path of one, and run `npm test` again.",
  };
}

export async function findChromium(): Promise<string | null> {
  const named = process.env.MORASCOPE_CHROMIUM;
  if (named !== undefined && existsSync(named)) return named;
  const system = systemPaths.find(existsSync);
  if (system !== undefined) return system;
  const { chromium } = await import("playwright-core");
  const downloaded = chromium.executablePath();
  return existsSync(downloaded) ? downloaded : null;
}

function run(command: string, args: readonly string[]): void {
  process.stdout.write(`No Chromium found: ${command} ${args.join(" ")}\n`);
  spawnSync(command, args, { stdio: "inherit", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } });
}
