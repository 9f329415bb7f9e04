// What is printed of one examination in each form, without a newline at the end.

import { type HandoffInput, mist, soap, textOf } from '../handoff/index.ts';
import { timelineText } from '../timeline/index.ts';
import type { Form } from './arguments.ts';
import { radioTexts, recordJson } from './record-json.ts';

/** The forms that can be printed today. */
export type PrintedForm = Exclude<Form, 'fhir'>;

/** The examination in the form asked for. */
export function outputOf(form: PrintedForm, input: HandoffInput): string {
  switch (form) {
    case 'json':
      return JSON.stringify(recordJson(input));
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
