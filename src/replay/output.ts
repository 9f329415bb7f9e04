// What is printed of one examination in each form, without a newline at the end.

import {
  type FhirInput,
  fhirDocument,
  type HandoffInput,
  imistAmbo,
  mist,
  sbar,
  soap,
  textOf,
} from '../handoff/index.ts';
import { timelineText } from '../timeline/index.ts';
import type { Form } from './arguments.ts';
import { furtherDetails, radioTexts, recordJson } from './record-json.ts';

/** Another patient that the talk turned to. */
export interface OtherPatient {
  readonly patient: number;
  readonly input: FhirInput;
}

/**
 * The examination in the form asked for; `file` names it where several are printed, and is null else. A FHIR document
 * has no place for a file's name. Other patients of the same talk are printed after the first, in JSON within it.
 */
export function outputOf(
  form: Form,
  input: FhirInput,
  others: readonly OtherPatient[],
  file: string | null,
): string {
  if (form === 'fhir')
    return [input, ...others.map((other) => other.input)]
      .map((each) => JSON.stringify(fhirDocument(each)))
      .join('\n');
  if (form === 'json') return JSON.stringify(recordJson(input, file, others));
  const text = [
    textIn(form, input),
    ...others.map((other) => `\n== patient ${other.patient} ==\n${textIn(form, other.input)}`),
  ].join('\n');
  return file === null ? text : `== ${file} ==\n${text}\n`;
}

function textIn(form: Exclude<Form, 'json' | 'fhir'>, input: HandoffInput): string {
  switch (form) {
    case 'soap':
      return textOf(soap(input));
    case 'mist':
      return textOf(mist(input));
    case 'imist-ambo':
      return textOf(imistAmbo(input));
    case 'sbar':
      return textOf(sbar(input));
    case 'radio':
      return [`(${furtherDetails(input)})`, ...radioTexts(input)].join('\n');
    case 'timeline':
      return timelineText(input);
    case 'report':
      return [timelineText(input), '', `Radio report (${furtherDetails(input)})`, ...radioTexts(input)].join(
        '\n',
      );
  }
}
