import { expect, test } from "vitest";
import { leastRecord } from "../../../species/records";
import { problemsOf, problemsWith } from "../../problems";

const named = (name: string) => ({ ...leastRecord.taxonomy, name });

test("the id is the accepted name, not a synonym or an older genus", () => {
  const taxonomy = { ...leastRecord.taxonomy, synonyms: ["Brachydanio rerio"] };
  expect(problemsWith({ taxonomy })).toStrictEqual([]);
  expect(problemsWith({ taxonomy, id: "brachydanio-rerio" })).toStrictEqual([
    ["id", '"danio-rerio", from the accepted name'],
  ]);
});

test("a name of three words makes an id of three", () => {
  const taxonomy = named("Betta splendens var-rubra");
  expect(problemsWith({ taxonomy, id: "betta-splendens-var-rubra" })).toStrictEqual([]);
  expect(problemsWith({ taxonomy, id: "betta-splendens" })).toHaveLength(1);
});

test("without a name there is nothing to compare the id with", () => {
  expect(problemsWith({ taxonomy: { ...leastRecord.taxonomy, name: 7 } })).toStrictEqual([
    ["taxonomy.name", "string"],
  ]);
});

test("either of the two may be the misspelt one", () => {
  const [problem] = problemsOf({ ...leastRecord, taxonomy: named("Danio reiro") });
  expect(problem?.explanation).toContain("correct whichever of the two is misspelt");
});
