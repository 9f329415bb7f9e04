// One finding in the few words of a short report, beside whatever was said against it.

import { isPaired } from '../../terms/index.ts';
import { clock, type Day } from '../../timeline/index.ts';
import type { Fact, FindingEntry } from '../sentences/fact.ts';
import { findingPhrase } from '../sentences/phrase.ts';
import { noPlace } from '../sentences/place.ts';

const partOf = ({ part }: FindingEntry): string => (part ?? []).map((word) => `${word} `).join('');

/** The fact, with what was said against it, each with its side or place where that is another, and its time. */
export function shortFact(fact: Fact, shared: boolean, day: Day): string {
  const { latest } = fact;
  const words = `${shared ? '' : partOf(latest)}${findingPhrase(latest)}`;
  const otherwise = [
    ...fact.against.map((one) => deniedOf(one, latest, day)),
    ...(fact.gone === undefined ? [] : [goneOf(fact.gone, latest, day)]),
  ];
  return otherwise.length === 0
    ? words
    : `${words} at ${clock(latest.at, day)} but ${otherwise.join(' and ')}`;
}

/** `denied at 14:12`; of one side of both `denied on the right at 14:12`. */
function deniedOf({ side, at }: FindingEntry, { side: found }: FindingEntry, day: Day): string {
  const on = found === 'both' && (side === 'left' || side === 'right') ? ` on the ${side}` : '';
  return `denied${on} at ${clock(at, day)}`;
}

/** `denied at 14:12`, `no abnormality at 14:12`; of the whole that the place is a part of `no swelling of the left leg at 14:12`. */
function goneOf(gone: FindingEntry, found: FindingEntry, day: Day): string {
  const isUnsided = gone.side === null && isPaired(gone.site);
  const of = gone.site === found.site && !isUnsided ? '' : ` of ${noPlace(gone)}`;
  const what = gone.finding === found.finding && of === '' ? 'denied' : `no ${findingPhrase(gone)}${of}`;
  return `${what} at ${clock(gone.at, day)}`;
}
