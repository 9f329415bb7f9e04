// The command line read into what to print and of which files, or why it is wrong.

/** What is printed of each file; `report` is the timeline and the radio report. */
export const FORMS = ['json', 'soap', 'mist', 'imist-ambo', 'sbar', 'radio', 'timeline', 'fhir'] as const;
export type Form = (typeof FORMS)[number] | 'report';

export const USAGE = `usage: npm run --silent replay -- [${FORMS.map((form) => `--${form}`).join(' | ')}] FILE…
FILE is a .talk file, a .wav recording, or - for talk on standard input.
Without an option it prints the timeline and the radio report.`;

export type Arguments =
  | { readonly kind: 'run'; readonly form: Form; readonly files: readonly string[] }
  | { readonly kind: 'usage'; readonly why: string };

const wrong = (why: string): Arguments => ({ kind: 'usage', why });

/** Reads the words after the program's name. After `--` every word is a file. */
export function readArguments(words: readonly string[]): Arguments {
  const files: string[] = [];
  const options: string[] = [];
  const stop = words.indexOf('--');
  for (const [index, word] of words.entries()) {
    if (index === stop) continue;
    const isOption = word.startsWith('-') && word !== '-' && (stop < 0 || index < stop);
    if (isOption) options.push(word);
    else files.push(word);
  }
  const forms = options.map((option) => FORMS.find((form) => option === `--${form}`));
  const unknown = options.find((_option, index) => forms[index] === undefined);
  if (unknown !== undefined) return wrong(`unknown option ${unknown}`);
  if (options.length > 1) return wrong('only one option at a time');
  if (files.length === 0) return wrong('no file');
  if (files.some((file) => file === '')) return wrong('a file without a name');
  if (files.filter((file) => file === '-').length > 1) return wrong('standard input can be read once only');
  return { kind: 'run', form: forms[0] ?? 'report', files };
}
