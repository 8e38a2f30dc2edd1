import { expect, test } from "vitest";
import { mended } from "../../../data/reading/mended";

test.each([
  ["TÃ¼pfelbÃ¤rbling", "Tüpfelbärbling"],
  ["GroÃŸer Ã„gypter", "Großer Ägypter"],
  ["Ãœberall", "Überall"],
  ["it doesnâ€™t", "it doesn’t"],
])("%s was %s", (misread, text) => {
  expect(mended(misread)).toBe(text);
});

test.each([
  "Tüpfelbärbling",
  "Öl",
  "São Gonçalo",
  "Cá chép",
  "18–24 °C",
  "Großbäße",
  "cá rô đồng",
  "“a”",
  "",
])("%s was read as it was written", (text) => {
  expect(mended(text)).toBe(text);
});
