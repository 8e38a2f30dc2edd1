import { expect, describe as suite, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPlan } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import type { Condition } from "../../../src/plan";
import {
  describe,
  describeIn,
  english,
  englishPages,
  profileMarkdown,
  profileMarkdownIn,
  rangeChart,
  rangeChartIn,
  reportParts,
  reportPartsIn,
  sentence,
  sentenceIn,
  sizeChart,
  sizeChartIn,
  speciesPage,
  speciesPageIn,
} from "../../../src/report";
import * as deModule from "../../../src/report/de";
import { expectRefused } from "../../refused";

const verdict = assessPlan({
  tank: { base: { shape: "rectangle", length: 60, width: 30 } },
  groups: [{ species: danioRerio, unsexed: 4 }],
});
const [finding] = verdict.findings;
const [question] = verdict.open;
const [condition] = verdict.conditions;
const [party] = verdict.parties;
const run = { on: "tank.longestRun", wanted: { min: 80 }, findings: [0] } as const;

suite("what is no verdict is refused, and says where", () => {
  test.each<readonly [unknown, string]>([
    [undefined, "verdict"],
    [null, "verdict"],
    ["suitable", "verdict"],
    [[], "verdict"],
    [{}, "verdict.outcome"],
    [{ ...verdict, outcome: "fine" }, "verdict.outcome"],
    [{ ...verdict, outcome: "toString" }, "verdict.outcome"],
    [{ ...verdict, bounds: undefined }, "verdict.bounds"],
    [{ ...verdict, bounds: { atBest: "suitable" } }, "verdict.bounds.atWorst"],
    [{ ...verdict, parties: {} }, "verdict.parties"],
    [{ ...verdict, parties: [{}] }, "verdict.parties.0.name"],
    [{ ...verdict, parties: [{ ...party, names: undefined }] }, "verdict.parties.0.names"],
    [{ ...verdict, parties: [{ ...party, names: { en: "zebra danio" } }] }, "verdict.parties.0.names"],
    [{ ...verdict, parties: [{ ...party, names: { en: [7] } }] }, "verdict.parties.0.names"],
    [{ ...verdict, parties: [{ ...party, count: new Map() }] }, "verdict.parties.0.count"],
    [{ ...verdict, parties: [{ ...party, males: "two" }] }, "verdict.parties.0.males"],
    [{ ...verdict, made: undefined }, "verdict.made"],
    [{ ...verdict, made: { ...verdict.made, rules: "all" } }, "verdict.made.rules"],
    [{ ...verdict, made: { ...verdict.made, rules: [7] } }, "verdict.made.rules"],
    [{ ...verdict, findings: [undefined] }, "verdict.findings.0"],
    [{ ...verdict, findings: [{ ...finding, rule: 7 }] }, "verdict.findings.0.rule"],
    [{ ...verdict, findings: [{ ...finding, weight: "fatal" }] }, "verdict.findings.0.weight"],
    [{ ...verdict, findings: [{ ...finding, basis: "hearsay" }] }, "verdict.findings.0.basis"],
    [{ ...verdict, findings: [{ ...finding, watchFor: "ghosts" }] }, "verdict.findings.0.watchFor"],
    [{ ...verdict, conditions: [{ ...condition, on: "tank.colour" }] }, "verdict.conditions.0.on"],
    [{ ...verdict, conditions: [{ ...condition, wanted: 7 }] }, "verdict.conditions.0.wanted"],
    [{ ...verdict, conditions: [{ ...condition, wanted: { oneOf: "x" } }] }, "verdict.conditions.0.wanted"],
    [
      { ...verdict, conditions: [{ ...run, wanted: { min: 80, unit: "degF" } }] },
      "verdict.conditions.0.wanted.unit",
    ],
    [{ ...verdict, conditions: [{ ...run, findings: undefined }] }, "verdict.conditions.0.findings"],
    [{ ...verdict, conditions: [{ ...run, of: 0 }] }, "verdict.conditions.0.of"],
    [{ ...verdict, conditions: [{ ...run, aim: { min: Number.NaN } }] }, "verdict.conditions.0.aim.min"],
    [{ ...verdict, findings: [{ ...finding, from: 1 }] }, "verdict.findings.0.from"],
    [{ ...verdict, findings: [{ ...finding, to: -1 }] }, "verdict.findings.0.to"],
    [{ ...verdict, open: [{ ...question, of: 9 }] }, "verdict.open.0.of"],
    [{ ...verdict, open: [{ ...question, reason: "none" }] }, "verdict.open.0.reason"],
    [{ ...verdict, open: [{ ...question, couldBe: "fatal" }] }, "verdict.open.0.couldBe"],
    [{ ...verdict, open: [{ ...question, trait: "water.colour" }] }, "verdict.open.0.trait"],
    [{ ...verdict, open: [{ ...question, on: "tank.colour" }] }, "verdict.open.0.on"],
    [{ ...verdict, met: 7 }, "verdict.met"],
  ])("%#", (given, path) => {
    const problems = [
      expect.objectContaining({
        path: path.split(".").map((key) => (/^\d+$/.test(key) ? Number(key) : key)),
      }),
    ];
    expect(() => Reflect.apply(describe, undefined, [given])).toThrow(expect.objectContaining({ problems }));
    expect(() => Reflect.apply(sentence, undefined, [given, finding])).toThrow(InvalidInputError);
  });
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, "7", {}])(
  "a figure of a finding that is no number is refused, not printed: %s",
  (value) => {
    const short = verdict.findings.find(({ rule }) => rule === "group-size") ?? expect.fail();
    const told = { ...short, measures: { ...short.measures, planned: { value, unit: "count" } } };
    for (const units of ["metric", "us"] as const)
      expectRefused(() => Reflect.apply(sentence, undefined, [verdict, told, { units }]), /\bvalue$/);
  },
);

suite("what is no part of a verdict is refused", () => {
  test.each([
    undefined,
    null,
    7,
    "temperature",
    [],
    {},
    { reason: "missing" },
    { wanted: {} },
    { on: "tank.lid", wanted: null },
    { on: "tank.lid", wanted: { oneOf: ["maybe"] } },
    { on: "tank.longestRun", wanted: { min: Number.NaN } },
    { on: "tank.longestRun", wanted: { min: 5, unit: "degF" } },
    { on: "tank.cover", wanted: { min: 30 } },
    { on: "group.count", wanted: { min: 8 } },
    { on: "group.count", of: 9, wanted: { min: 8 } },
    { ...finding, from: 9 },
    { ...finding, to: 0.5 },
    { ...finding, weight: "restricting", condition: { on: "tank.cover", wanted: { min: 30 } } },
  ])("%j", (part) => {
    expect(() => Reflect.apply(sentence, undefined, [verdict, part])).toThrow(InvalidInputError);
  });
});

suite("what are no options is refused", () => {
  test("nor is a system of units that cannot even be written as a word", () => {
    const options = { units: Object.create(null) };
    expectRefused(() => describe(verdict, options), /^options\.units$/);
    expectRefused(() => sizeChart([danioRerio], options), /^options\.units$/);
  });

  test.each([null, "us", 7, []])("%j", (options) => {
    const calls: readonly (readonly [(...given: never) => string, readonly unknown[]])[] = [
      [describe, [verdict]],
      [describeIn, [english, verdict]],
      [sentence, [verdict, finding]],
      [sentenceIn, [english, verdict, finding]],
      [profileMarkdown, [danioRerio]],
      [profileMarkdownIn, [english, danioRerio]],
    ];
    for (const [call, given] of calls) {
      expect(() => Reflect.apply(call, undefined, [...given, options])).toThrow(InvalidInputError);
    }
  });
});

suite("what are no messages of a language is refused", () => {
  const words = [null, "de", 0, {}, [], { ...deModule }, { language: "de" }];
  const given = [danioRerio];
  const path = "water.temperature";
  const writersWith = (options: never) => [
    () => describe(verdict, options),
    () => sentence(verdict, condition as Condition, options),
    () => reportParts(verdict, options),
    () => profileMarkdown(danioRerio, options),
    () => speciesPage(danioRerio, options),
    () => rangeChart(given, path, options),
    () => sizeChart(given, options),
  ];
  const writersIn = (messages: never) => [
    () => describeIn(messages, verdict),
    () => sentenceIn(messages, verdict, condition as Condition),
    () => reportPartsIn(messages, verdict),
    () => profileMarkdownIn(messages, danioRerio),
    () => speciesPageIn(messages, danioRerio),
    () => rangeChartIn(messages, given, path),
    () => sizeChartIn(messages, given),
  ];

  test.each(words)("%#", (messages) => {
    for (const write of writersWith({ messages } as never)) expectRefused(write, /^options\.messages$/);
    for (const write of writersIn(messages as never)) expectRefused(write, /^messages$/);
  });

  test.each(["fr_FR", "x", "", "German (Austria)"])("the language %j, which is no tag", (language) => {
    const messages = { ...englishPages, language };
    for (const write of writersWith({ messages } as never))
      expectRefused(write, /^options\.messages\.language$/);
    for (const write of writersIn(messages as never)) expectRefused(write, /^messages\.language$/);
  });

  test.each(["de-AT", "fr-FR", "pt-BR"])("the language %s, which is one, is not", (language) => {
    const messages = { ...englishPages, language };
    for (const write of [...writersWith({ messages } as never), ...writersIn(messages as never)])
      expect(write).not.toThrow();
  });

  test("nor are the messages of reports those of pages", () => {
    expectRefused(() => speciesPage(danioRerio, { messages: english as never }), /^options\.messages\.page$/);
    expectRefused(() => speciesPageIn(english as never, danioRerio), /^messages\.page$/);
  });
});
