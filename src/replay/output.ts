// What is printed of one examination in each form, without a newline at the end.

import { type FhirInput, fhirDocument, type HandoffInput, mist, soap, textOf } from '../handoff/index.ts';
import { timelineText } from '../timeline/index.ts';
import type { Form } from './arguments.ts';
import { furtherDetails, radioTexts, recordJson } from './record-json.ts';

/**
 * The examination in the form asked for; `file` names it where several are printed, and is null else. A FHIR document
 * has no place for a file's name.
 */
export function outputOf(form: Form, input: FhirInput, file: string | null): string {
  if (form === 'fhir') return JSON.stringify(fhirDocument(input));
  if (form === 'json') return JSON.stringify(recordJson(input, file));
  const text = textIn(form, input);
  return file === null ? text : `== ${file} ==\n${text}\n`;
}

function textIn(form: Exclude<Form, 'json' | 'fhir'>, input: HandoffInput): string {
  switch (form) {
    case 'soap':
      return textOf(soap(input));
    case 'mist':
      return textOf(mist(input));
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
