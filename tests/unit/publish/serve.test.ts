import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { notASite, portTaken } from "../../../src/messages/publish.ts";
import { siteMarker } from "../../../src/publish/outputFolder.ts";
import { isEscape, type Served, serve } from "../../../src/publish/serve.ts";

let folder: string;
let served: Served;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-serve-"));
  const site = path.join(folder, "site");
  await mkdir(path.join(site, "clips"), { recursive: true });
  await writeFile(path.join(site, siteMarker), "{}");
  await writeFile(path.join(site, "index.html"), "<html>start<script>a()</script></html>");
  await writeFile(path.join(site, "length.html"), "<html>length</html>");
  await mkdir(path.join(site, "ja"));
  await writeFile(path.join(site, "ja", "index.html"), "<html>hajime<script>b()</script></html>");
  await writeFile(path.join(site, "clips", "a.wav"), "0123456789");
  await writeFile(path.join(folder, "secret.txt"), "secret");
  served = await serve({ site });
});
afterAll(async () => {
  await served.close();
  await rm(folder, { recursive: true, force: true });
});

/** A request whose path is sent as it is, without the tidying that `fetch` does. */
function raw(target: string, headers: Record<string, string> = {}, method = "GET") {
  const { hostname, port } = new URL(served.url);
  return new Promise<{ status: number; headers: Record<string, unknown>; body: string }>(
    (resolve, reject) => {
      const sent = request({ hostname, port, path: target, headers, method }, (response) => {
        let body = "";
        response.on("data", (chunk) => {
          body += chunk;
        });
        response.on("end", () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
        );
      });
      sent.on("error", reject);
      sent.end();
    },
  );
}

describe("serve", () => {
  test("listens on this machine only unless told otherwise", () => {
    expect(new URL(served.url).hostname).toBe("127.0.0.1");
  });

  test("maps clean addresses to pages, and answers 404 where there is none", async () => {
    expect((await raw("/")).body).toContain("start");
    expect((await raw("/length?by=position")).body).toContain("length");
    expect((await raw("/nothing")).status).toBe(404);
  });

  test.each([
    "bytes=-1",
    "bytes=5-2",
    "bytes=0-18446744073709551616",
    "bytes=0-0,2-2",
    "lines=1-2",
    "bytes=a-b",
  ])("answers a range that is not one plain stretch with the whole: %s", async (range) => {
    const { status, body } = await raw("/clips/a.wav", { range });
    expect([status, body]).toEqual([200, "0123456789"]);
  });

  test("answers a byte range of a recording with just these bytes", async () => {
    const { status, headers, body } = await raw("/clips/a.wav", { range: "bytes=2-5" });
    expect([status, body, headers["content-range"]]).toEqual([206, "2345", "bytes 2-5/10"]);
  });

  test("leads an address with a stray or missing slash to the page's own, never to another host", async () => {
    const seen = await Promise.all(
      ["/length/?by=position", "/length//", "//length/", "/ja", "/length.html/", "/length%2F"].map((target) =>
        raw(target),
      ),
    );
    expect(seen.map(({ status, headers }) => [status, headers.location])).toEqual(
      ["/length?by=position", "/length", "/length", "/ja/", "/length.html", "/length"].map((to) => [302, to]),
    );
    const own = await raw("/ja/");
    expect([own.status, own.body]).toEqual([200, "<html>hajime<script>b()</script></html>"]);
    expect(own.headers["content-security-policy"]).toContain("'sha256-");
    expect((await raw("/clips/")).status).toBe(404);
  });

  test("sends each page a policy that forbids other hosts and allows its own inline scripts by hash", async () => {
    const policy = String((await raw("/")).headers["content-security-policy"]);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("'sha256-");
    expect(policy).not.toMatch(/https?:/);
  });

  test.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/..%2fsecret.txt",
    "/clips/..\\..\\secret.txt",
    "/.hidden",
    "/%00",
    "/%zz",
  ])("refuses %s", async (target) => {
    const { status, body } = await raw(target);
    expect(status).toBe(400);
    expect(body).not.toContain("secret\n");
  });

  test("refuses to be written to", async () => {
    expect((await raw("/", {}, "POST")).status).toBe(405);
  });

  test("refuses a folder that is no report, and a port in use", async () => {
    await expect(serve({ site: folder })).rejects.toThrow(notASite(folder));
    const port = Number(new URL(served.url).port);
    await expect(serve({ site: path.join(folder, "site"), port })).rejects.toThrow(portTaken(port));
  });
});

test("isEscape passes ordinary addresses, whatever stands in their query", () => {
  expect(["/", "/length", "/_file/data/a.b.parquet", "/x?../.."].map(isEscape)).toEqual([
    false,
    false,
    false,
    false,
  ]);
});
