// Reads the test cases of the Recognizers-Text specifications (MIT) where they lie beside the project.

import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** One case: a sentence and what the specification expects to be found in it. */
export interface RecognizerCase {
  readonly Input: string;
  readonly Results: readonly {
    readonly Text: string;
    readonly Start: number;
    readonly Resolution?: { readonly value?: string | null; readonly unit?: string };
    readonly Value?: { readonly Timex?: string } | null;
  }[];
}

const folder = fileURLToPath(new URL('../../../shared/data/numbers/', import.meta.url));

/** Where the specifications are expected, as a person would look for them. */
export const CASES_PLACE = '../shared/data/numbers (Recognizers-Text Specs/*/English)';

/** The cases of one model, or null where the data is not beside the project. */
export function casesOf(model: string): readonly RecognizerCase[] | null {
  const file = `${folder}${model}.json`;
  if (!existsSync(file)) {
    console.info(`${model}: not checked, ${CASES_PLACE} is absent`);
    return null;
  }
  return JSON.parse(readFileSync(file, 'utf8').replace(/^\uFEFF/, '')) as readonly RecognizerCase[];
}

/** A rule by which cases are left out, with why; it looks at the case alone and never at what we make of it. */
export interface LeftOut {
  readonly rule: string;
  readonly why: string;
  readonly fits: (one: RecognizerCase) => boolean;
}

/** The cases that no rule leaves out, and how many each rule took (the first that fits counts). */
export function sifted(cases: readonly RecognizerCase[], rules: readonly LeftOut[]) {
  const ruleOf = (one: RecognizerCase) => rules.find(({ fits }) => fits(one));
  const kept = cases.filter((one) => ruleOf(one) === undefined);
  const counts = rules
    .map((rule) => ({ rule, count: cases.filter((one) => ruleOf(one) === rule).length }))
    .filter(({ count }) => count > 0);
  return { kept, counts };
}

/** The counts as lines to print: so many kept, and for each rule how many it left out and why. */
export const countLines = (
  model: string,
  cases: readonly RecognizerCase[],
  { kept, counts }: ReturnType<typeof sifted>,
): string =>
  [
    `${model}: ${kept.length} of ${cases.length} cases checked`,
    ...counts.map(({ rule, count }) => `  left out ${count}: ${rule.rule} (${rule.why})`),
  ].join('\n');

/** Words as the parser receives them: lower case, no punctuation, hyphens, figures and letters apart. */
export const wordsOf = (text: string): readonly string[] =>
  text
    .toLowerCase()
    .replace(/(\d)\s*\/\s*(?=\d)/g, '$1 over ')
    .replaceAll('%', ' percent ')
    .replace(/([ap])\.\s?m\b\.?/g, '$1 m')
    .replace(/\d+(?:,\d{3})+(?!\d)/g, (grouped) => grouped.replaceAll(',', ''))
    .replace(/(\d)(?=[a-zµμ°])|([a-z°])(?=\d)/g, '$1$2 ')
    .replace(/[^\p{L}\p{N}.:' ]+/gu, ' ')
    .split(' ')
    .map((word) => word.replace(/[.:']+$/, '').replace(/^[:']+|^\.(?!\d)/, ''))
    .filter((word) => word !== '');
