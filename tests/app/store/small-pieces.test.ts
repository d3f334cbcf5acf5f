import { describe, expect, test } from "vitest";
import { idSource, nextId } from "../../../app/store/ids.ts";
import { keepPreferences, readPreferences, themeOf, USUAL_PREFERENCES } from "../../../app/store/preferences.ts";
import { partName, placeName } from "../../../app/store/part-view.ts";
import { sameCircuit } from "../../../app/store/same-circuit.ts";
import { standingWords } from "../../../app/store/standing-words.ts";
import { lampCircuit, textKeeper } from "../drawing.ts";

describe("ids", () => {
  test("go on from the highest number in use, over parts and wires", () => {
    expect(nextId(lampCircuit, "w")).toBe("w5");
    expect(nextId(lampCircuit, "k")).toBe("k1");
    const fresh = idSource(lampCircuit);
    expect([fresh("la"), fresh("la"), fresh("w")]).toEqual(["la2", "la3", "w5"]);
  });
});

describe("preferences", () => {
  test("come back as they were kept", () => {
    const keeper = textKeeper();
    keepPreferences(keeper, { ...USUAL_PREFERENCES, theme: "sunlight", words: "earth" });
    expect(readPreferences(keeper)).toMatchObject({ theme: "sunlight", words: "earth", units: "metric" });
  });

  test("are the usual ones where nothing sensible was kept", () => {
    for (const kept of ["", "null", "7", '{"theme":"pink"}', "{oops"]) {
      expect(readPreferences({ getItem: () => kept, setItem: () => undefined })).toEqual(USUAL_PREFERENCES);
    }
  });

  test("survive storage that refuses", () => {
    const refusing = {
      getItem: () => null,
      setItem: () => {
        throw new Error("full");
      },
    };
    expect(() => keepPreferences(refusing, USUAL_PREFERENCES)).not.toThrow();
  });

  test("the automatic theme follows the device", () => {
    expect(themeOf(USUAL_PREFERENCES, true)).toBe("dark");
    expect(themeOf({ ...USUAL_PREFERENCES, theme: "sunlight" }, true)).toBe("sunlight");
  });
});

describe("the same circuit", () => {
  test("places, turns and corners make no difference; everything else does", () => {
    const [battery, fuse, ...rest] = lampCircuit.parts;
    const moved = {
      ...lampCircuit,
      parts: [battery!, { ...fuse!, at: [99, 9], turn: 90, flip: true } as const, ...rest],
    };
    const bent = { ...lampCircuit, wires: lampCircuit.wires.map((wire) => ({ ...wire, via: [[1, 1]] as const })) };
    const rated = { ...lampCircuit, parts: [battery!, { ...fuse!, props: { ratingA: 15 } }, ...rest] };
    const renamed = { ...lampCircuit, parts: [battery!, { ...fuse!, label: "Main" }, ...rest] };
    expect(sameCircuit(lampCircuit, moved)).toBe(true);
    expect(sameCircuit(lampCircuit, bent)).toBe(true);
    expect(sameCircuit(lampCircuit, rated)).toBe(false);
    expect(sameCircuit(lampCircuit, renamed)).toBe(false);
    expect(sameCircuit(lampCircuit, { ...lampCircuit, system: { nominalV: 24 } })).toBe(false);
  });
});

describe("names", () => {
  test("a part is its id in capitals with its label, said once", () => {
    expect(partName({ id: "k1", kind: "relay" })).toBe("K1");
    expect(partName({ id: "k1", kind: "relay", label: "work lamps" })).toBe("K1 work lamps");
    expect(partName({ id: "k1", kind: "relay", label: "K1 work lamps" })).toBe("K1 work lamps");
  });

  test("places are named as people say them", () => {
    expect(placeName(lampCircuit, "la1.+")).toBe("terminal + of LA1");
    expect(placeName(lampCircuit, "w2")).toBe("wire W2");
  });

  test("how a terminal stands is one phrase", () => {
    const standing = { hot: "at-rest", via: "load", when: "s1 is off", bare: true, faultA: null } as const;
    expect(standingWords(standing)).toBe("hot at rest through a load, while s1 is off");
    expect(standingWords({ ...standing, hot: "always", via: "direct", when: "always" })).toBe("always hot");
  });
});
