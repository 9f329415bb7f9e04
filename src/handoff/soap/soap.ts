// The narrative in the order Subjective, Objective, Assessment, Plan, in which every standing entry but a visit has its line.

import { dayOf } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { opening } from '../opening.ts';
import type { HandoffText } from '../text.ts';
import { assessment } from './assessment.ts';
import { objective } from './objective.ts';
import { plan } from './plan.ts';
import { subjective } from './subjective.ts';

/**
 * The SOAP note. Source of the order: Weed LL, Medical records that guide and teach, N Engl J Med
 * 1968;278:593-600 and 652-657 (from memory).
 */
export function soap(input: HandoffInput): HandoffText {
  const day = dayOf(input.startedAt);
  return {
    lines: [
      ...opening('SOAP', input),
      ...subjective(input, day),
      ...objective(input, day),
      ...assessment(input, day),
      ...plan(input, day),
    ],
  };
}
