// What is printed of one examination in each form, without a newline at the end.

import { type HandoffInput, mist, soap, textOf } from '../handoff/index.ts';
import { timelineText } from '../timeline/index.ts';
import type { Form } from './arguments.ts';
import { radioTexts, recordJson } from './record-json.ts';

/** The forms that can be printed today. */
export type PrintedForm = Exclude<Form, 'fhir'>;

/** The examination in the form asked for; `file` names it where several are printed, and is null else. */
export function outputOf(form: PrintedForm, input: HandoffInput, file: string | null): string {
  if (form === 'json') return JSON.stringify(recordJson(input, file));
  const text = textIn(form, input);
  return file === null ? text : `== ${file} ==\n${text}\n`;
}

function textIn(form: Exclude<PrintedForm, 'json'>, input: HandoffInput): string {
  switch (form) {
    case 'soap':
      return textOf(soap(input));
    case 'mist':
      return textOf(mist(input));
    case 'radio':
      return radioTexts(input).join('\n');
    case 'timeline':
      return timelineText(input);
    case 'report':
      return [timelineText(input), '', 'Radio report', ...radioTexts(input)].join('\n');
  }
}
