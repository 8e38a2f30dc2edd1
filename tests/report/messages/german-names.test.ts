import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { german } from "../../../src/report/de";
import { isDeclined } from "../../../src/report/messages/german-names";

test.each([
  ["Sumatrabarbe", "Sumatrabarben", "die Sumatrabarbe", "die Sumatrabarbe"],
  ["Neonsalmler", "Neonsalmler", "der Neonsalmler", "den Neonsalmler"],
  ["Roter Neon", "Rote Neons", "der Rote Neon", "den Roten Neon"],
  ["Guppy", "Guppys", "der Guppy", "den Guppy"],
  ["Feuerschwanz", "Feuerschwänze", "der Feuerschwanz", "den Feuerschwanz"],
  ["Azurcichlide", "Azurcichliden", "der Azurcichlide", "den Azurcichliden"],
  ["Gepunktetes Blauauge", "Gepunktete Blauaugen", "das Gepunktete Blauauge", "das Gepunktete Blauauge"],
  ["Silberflossenblatt", "Silberflossenblätter", "das Silberflossenblatt", "das Silberflossenblatt"],
  [
    "Prinzessin von Burundi",
    "Prinzessinnen von Burundi",
    "die Prinzessin von Burundi",
    "die Prinzessin von Burundi",
  ],
  ["Roter von Rio", "Rote von Rio", "der Rote von Rio", "den Roten von Rio"],
  ["Black Molly", "Black Mollys", "der Black Molly", "den Black Molly"],
  ["Schleier-Oskar", "Schleier-Oskars", "der Schleier-Oskar", "den Schleier-Oskar"],
  [
    "Langflossiger Schwarzer Neon",
    "Langflossige Schwarze Neons",
    "der Langflossige Schwarze Neon",
    "den Langflossigen Schwarzen Neon",
  ],
  [
    "Espes Keilfleckbärbling",
    "Espes Keilfleckbärblinge",
    "Espes Keilfleckbärbling",
    "Espes Keilfleckbärbling",
  ],
  [
    "Agassiz' Zwergbuntbarsch",
    "Agassiz' Zwergbuntbarsche",
    "Agassiz' Zwergbuntbarsch",
    "Agassiz' Zwergbuntbarsch",
  ],
  ["L46", "L46", "L46", "L46"],
  ["Corydoras duplicareus", "Corydoras duplicareus", "Corydoras duplicareus", "Corydoras duplicareus"],
])("of %s several are %s, one is %s, and one is kept as %s", (name, several, subject, object) => {
  expect(german.several(name)).toBe(several);
  expect(german.this(name, "subject")).toBe(subject);
  expect(german.this(name, "object")).toBe(object);
});

const named = allSpecies.flatMap(({ names, forms = {} }) => [
  ...(names.de ?? []),
  ...Object.values(forms).flatMap((form) => form.names.de ?? []),
]);

test("nearly every species has a German name, and nearly every name can be declined", () => {
  const without = allSpecies.filter(({ names }) => !names.de?.length);
  expect(without.length).toBeLessThan(0.1 * allSpecies.length);
  expect(named.filter((name) => !isDeclined(name)).length).toBeLessThan(0.02 * named.length);
});

test("a German name begins with a capital and is no English one", () => {
  for (const name of named) expect(name).toMatch(/^[\p{Lu}]/u);
  const english = new Set(allSpecies.flatMap(({ names }) => names.en ?? []));
  expect(named.filter((name) => english.has(name) && /[a-z]/.test(name))).toEqual([]);
});
