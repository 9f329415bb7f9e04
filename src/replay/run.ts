// One run of the command line: what it prints, what it complains of, and with which status it ends.

import { createReader } from '../parse/index.ts';
import type { Default } from '../record/talk/index.ts';
import { readArguments, USAGE } from './arguments.ts';
import { examineAll } from './examine.ts';
import { fhirInput } from './fhir-input.ts';
import { grammarFiles } from './grammar-files.ts';
import { readInput } from './input.ts';
import { outputOf } from './output.ts';

/** 0 done; 1 some input could not be read; 2 the command line is wrong. */
export type Status = 0 | 1 | 2;

export interface Outside {
  /** where and when a talk begins that does not say it */
  readonly otherwise: Default;
  /** a line (or several) for standard output */
  readonly print: (text: string) => void;
  /** a line for standard error */
  readonly complain: (text: string) => void;
}

/** Does what the words of the command line ask. A file that cannot be read does not keep the others from being printed. */
export async function run(words: readonly string[], outside: Outside): Promise<Status> {
  const { otherwise, print, complain } = outside;
  const asked = readArguments(words);
  if (asked.kind === 'usage') {
    complain(`${asked.why}\n${USAGE}`);
    return 2;
  }
  const { form, files } = asked;
  const made = createReader(grammarFiles());
  if (made.kind === 'errors') {
    for (const { file, line, rule, message } of made.errors)
      complain(`${file}:${line}: <${rule}> ${message}`);
    return 1;
  }
  const several = files.length > 1;
  let status: Status = 0;
  for (const file of files) {
    const input = await readInput(file, otherwise);
    if (input.kind === 'unreadable') {
      complain(input.why);
      status = 1;
      continue;
    }
    if (input.remark !== undefined) {
      complain(input.remark);
      status = 1;
    }
    const [first, ...others] = examineAll(made.reader, input).map(({ patient, exam }) => ({
      patient,
      input: fhirInput(input, exam, patient),
    }));
    if (first !== undefined) print(outputOf(form, first.input, others, several ? file : null));
  }
  return status;
}
