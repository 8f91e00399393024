import type { Page } from "playwright-core";

/** Collects what must not happen on a page: console errors, uncaught errors, failed and outside requests. */
export function watchPage(page: Page, url: string): string[] {
  const faults: string[] = [];
  page.on("console", (message) => {
    if (message.type() === "error") faults.push(`console: ${message.text()}`);
  });
  page.on("pageerror", (error) => faults.push(`error: ${error.message}`));
  page.on("requestfailed", (request) => faults.push(`failed: ${request.url()}`));
  page.on("request", (request) => {
    const address = request.url();
    if (!address.startsWith(url) && !/^(?:data|blob):/.test(address)) faults.push(`outside: ${address}`);
  });
  return faults;
}
