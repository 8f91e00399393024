import { mkdir, mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import wavefile from "wavefile";
import { siteMarker } from "../../../src/publish/outputFolder.ts";
import { type Served, serve } from "../../../src/publish/serve.ts";
import { writeListenResults } from "./listenFixture.ts";

let folder: string;
let served: Served;
let closed: Served;
beforeAll(async () => {
  folder = await mkdtemp(path.join(tmpdir(), "morascope-route-"));
  const site = path.join(folder, "site");
  await mkdir(path.join(site, "ja"), { recursive: true });
  await mkdir(path.join(folder, "recordings"));
  await writeFile(path.join(site, siteMarker), "{}");
  await writeFile(path.join(site, "index.html"), "<html><head></head>start</html>");
  for (const page of ["listen.html", "ja/listen.html"])
    await writeFile(path.join(site, page), "<html><head></head>sounds<script>a()</script></html>");
  await writeListenResults(folder, [
    { utterance: "u1", speaker: "a", audio: "u1.wav" },
    { utterance: "u2/b", speaker: "a", audio: "../secret.wav" },
    { utterance: "u3", speaker: "a", audio: null },
    { utterance: "u4", speaker: "a", audio: "none.wav" },
  ]);
  const file = new wavefile.WaveFile();
  file.fromScratch(
    1,
    48_000,
    "16",
    Int16Array.from({ length: 24_000 }, (_, i) => (i % 100) * 50),
  );
  await writeFile(path.join(folder, "recordings", "u1.wav"), file.toBuffer());
  await writeFile(path.join(folder, "recordings", "unlisted.wav"), file.toBuffer());
  await writeFile(path.join(folder, "secret.wav"), file.toBuffer());
  served = await serve({ site, local: { results: folder, folders: { d: path.join(folder, "recordings") } } });
  closed = await serve({ site });
});
afterAll(async () => {
  await served.close();
  await closed.close();
  await rm(folder, { recursive: true, force: true });
});

function ask(target: string, headers: Record<string, string> = {}, { url } = served) {
  const { hostname, port } = new URL(url);
  return new Promise<{ status: number; headers: Record<string, unknown>; body: Buffer }>(
    (resolve, reject) => {
      const sent = request({ hostname, port, path: target, headers }, (response) => {
        const parts: Buffer[] = [];
        response.on("data", (part: Buffer) => parts.push(part));
        response.on("end", () =>
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: Buffer.concat(parts),
          }),
        );
      });
      sent.on("error", reject);
      sent.end();
    },
  );
}

const clip = (utterance: string, dataset = "d") =>
  `/local/clip.wav?${new URLSearchParams({ dataset, utterance })}`;

describe("serve with results", () => {
  test("cuts a recording of the results when it is asked for, at its own rate, and gives ranges of it", async () => {
    const { status, headers, body } = await ask(clip("u1"));
    expect([status, headers["content-type"], headers["cache-control"]]).toEqual([
      200,
      "audio/wav",
      "no-store",
    ]);
    const wav = new wavefile.WaveFile(body);
    expect((wav.fmt as { sampleRate: number }).sampleRate).toBe(48_000);
    expect(wav.getSamples(false, Int16Array).length).toBe(24_000);
    const part = await ask(clip("u1"), { range: "bytes=0-3" });
    expect([part.status, part.body.toString(), part.headers["content-range"]]).toEqual([
      206,
      "RIFF",
      `bytes 0-3/${body.length}`,
    ]);
    expect((await ask(clip("u1"), { range: "bytes=99999999-" })).status).toBe(416);
  });

  test.each([
    ["an utterance the results do not hold", clip("unlisted"), 404],
    ["a dataset they do not hold", clip("u1", "e"), 404],
    ["an utterance without a recording", clip("u3"), 404],
    ["a recording that is gone", clip("u4"), 500],
    ["a path of the results that leaves the dataset's folder", clip("u2/b"), 500],
    ["a path in place of an id", clip("../secret.wav"), 404],
    ["anything else", "/local/run.json", 404],
  ])("gives nothing for %s", async (_, target, status) => {
    const answer = await ask(target);
    expect(answer.status).toBe(status);
    expect(answer.body.includes("RIFF")).toBe(false);
  });

  test("lists every single sound", async () => {
    const list = JSON.parse((await ask("/local/listen.json")).body.toString());
    expect(list.utterances.map(({ utterance }: { utterance: string }) => utterance)).toEqual([
      "u1",
      "u2/b",
      "u3",
      "u4",
    ]);
    expect(list.datasets).toEqual([{ id: "d", tokens: 32, shown: 32, silent: null }]);
    expect((await ask("/local/listen.parquet")).body.subarray(0, 4).toString()).toBe("PAR1");
  });

  test("tells every page, in any language, what can be heard, and the policy still fits it", async () => {
    const told = `<meta name="morascope-local" content='["d"]'></head>`;
    for (const page of ["/", "/listen", "/ja/listen", "/listen?sound=i"]) {
      const { body, headers } = await ask(page);
      expect(body.toString()).toContain(told);
      if (page !== "/") expect(headers["content-security-policy"]).toContain("'sha256-");
    }
  });

  test.each([
    ["asked for by a stranger's name", { host: "stranger.example" }],
    ["asked for by a page of another site", { "sec-fetch-site": "cross-site" }],
    ["asked for by another port of this machine", { "sec-fetch-site": "same-site" }],
  ])("gives no recording when %s", async (_, headers) => {
    expect((await ask(clip("u1"), headers)).status).toBe("host" in headers ? 403 : 404);
    expect((await ask("/listen", headers)).body.toString()).not.toContain("morascope-local");
  });

  test("gives no recording where a report alone is served", async () => {
    expect((await ask(clip("u1"), {}, closed)).status).toBe(404);
  });
});

test("what was made for one serving is gone when it ends", async () => {
  const before = (await readdir(tmpdir())).filter((name) => name.startsWith("morascope-local-"));
  const again = await serve({ site: path.join(folder, "site"), local: { results: folder, folders: {} } });
  await ask("/local/listen.json", {}, again);
  await again.close();
  const after = (await readdir(tmpdir())).filter((name) => name.startsWith("morascope-local-"));
  expect(after.filter((name) => !before.includes(name))).toEqual([]);
});
