import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const places = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** A Chromium on this machine: the one named by CHROMIUM, the system's, or the driver's own download; null when there is none. */
export function findChromium(): string | null {
  const named = process.env.CHROMIUM;
  const found = [named, ...places, chromium.executablePath()].find((file) => file && existsSync(file));
  return found ?? null;
}

/** A fresh browser that keeps quiet by itself: no updates, no reports, nothing but what a page asks for. */
export async function launchBrowser(): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) {
    throw new Error(
      "No Chromium found. Install one (Debian: apt-get install chromium) or name it in CHROMIUM.",
    );
  }
  return chromium.launch({
    executablePath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
