import { expect, test } from "vitest";
import { citableAddress } from "../../../../src/publish/cite/citableAddress.ts";

test.each([
  "https://example.org/devoicing?vowel=u#devoicing-rates",
  "http://sounds.example.ac.jp:8080/",
  "https://172.200.1.1/",
  "https://localhost.example.org/",
])("citableAddress(%s) is the address itself", (address) => {
  expect(citableAddress(address)).toBe(address);
});

test.each([
  "http://127.0.0.1:4321/length",
  "http://localhost:3000/",
  "http://desk.local/",
  "http://[::1]:8080/",
  "http://192.168.0.7/",
  "http://10.1.2.3/",
  "http://172.16.0.1/",
  "file:///home/someone/site/index.html",
])("citableAddress(%s) is none, since nobody else could follow it", (address) => {
  expect(citableAddress(address)).toBeNull();
});
