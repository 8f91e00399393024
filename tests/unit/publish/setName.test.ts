import { describe, expect, test } from "vitest";
import { setName } from "../../../src/publish/setName.ts";
import { inventCard } from "../../pages/fixtures/cards.ts";

describe("setName", () => {
  const card = (name: string) => inventCard({ id: "short", name }, { id: "one" });
  test("shortens a long name to what stands before its comma, else to the id", () => {
    expect(setName([card("JSUT, a corpus with a very long name indeed and more")], "short", "one")).toBe(
      "JSUT",
    );
    expect(setName([card("a corpus with a very long name indeed and no comma")], "short", "one")).toBe(
      "short",
    );
    expect(setName([card("Fine")], "short", "one")).toBe("Fine");
  });

  test("tells label sets of one dataset apart", () => {
    const two = { ...card("Fine"), labelSets: [...card("Fine").labelSets, ...card("Fine").labelSets] };
    expect(setName([two], "short", "one")).toBe("Fine, one");
  });
});
