import type * as z from "zod/mini";
import { quote, refuse, step as stepInWords, type Refusal } from "./refusal.ts";

type Issue = z.core.$ZodIssue;

/** The first thing wrong with `value`, as a refusal whose key starts with `prefix`. */
export function issueInWords(issues: readonly Issue[], value: unknown, prefix = ""): Refusal {
  const issue = deepest(issues[0]!);
  const path = issue.path;
  const got = path.reduce<unknown>((at, key) => (at as Record<PropertyKey, unknown> | null)?.[key as string], value);
  return refuse(prefix + keyInWords(path, prefix === ""), gotInWords(issue, got), wantedInWords(issue));
}

/** Of a choice of shapes the first one's complaint. */
function deepest(issue: Issue): Issue {
  const inner = issue.code === "invalid_union" ? issue.errors[0]?.[0] : undefined;
  return inner ? deepest({ ...inner, path: [...issue.path, ...inner.path] }) : issue;
}

function keyInWords(path: readonly PropertyKey[], isRoot: boolean): string {
  return path.reduce<string>((key, step, at) => {
    if (typeof step === "number") return `${key}[${step}]`;
    const name = stepInWords(String(step));
    return isRoot && at === 0 ? name : `${key}.${name}`;
  }, "");
}

function gotInWords(issue: Issue, got: unknown): string {
  if (issue.code === "too_big" && typeof got === "string") return `text of ${got.length} characters`;
  return quote(got);
}

function wantedInWords(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return TYPES[issue.expected] ?? `a ${issue.expected}`;
    case "invalid_value":
      return issue.values.map((value) => JSON.stringify(value)).join(" or ");
    case "too_small":
      return issue.origin === "number"
        ? `at least ${String(issue.minimum)}`
        : `at least ${String(issue.minimum)} in it`;
    case "too_big":
      return issue.origin === "number" ? `at most ${String(issue.maximum)}` : `at most ${String(issue.maximum)} in it`;
    case "not_multiple_of":
      return "a whole number";
    case "invalid_format":
      return FORMATS[String(issue.path.at(-1))] ?? "letters, digits, _ and - (at most 64)";
    default:
      return issue.message || "another value";
  }
}

const TYPES: Readonly<Record<string, string>> = {
  object: "an object",
  array: "a list",
  string: "text in quotes",
  number: "a number",
  boolean: "true or false",
  tuple: "two numbers [x, y]",
  record: "an object",
};

const FORMATS: Readonly<Record<string, string>> = {
  size: '"16 AWG", "1/0 AWG" or "1.5 mm2"',
};
