// Whatever a short radio report left out or shortened, in pieces of the same length, so that nothing is unreachable.

import type { Entry } from '../../record/entry.ts';
import { TOPICS } from '../../terms/index.ts';
import { type Day, dayOf, series } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { complaintTimes, injuryTimes } from '../parts/incident.ts';
import { denials } from '../parts/injuries.ts';
import { problemsTold } from '../problems.ts';
import { caresTold } from '../sentences/care.ts';
import { csmTold } from '../sentences/csm.ts';
import { metFlags } from '../sentences/flags.ts';
import { ofTopic, topicTold } from '../sentences/history.ts';
import { doubtSentences, keptTogether } from '../sentences/kept.ts';
import { and } from '../sentences/list.ts';
import { missingSigns, scoreSentences } from '../sentences/signs.ts';
import type { Told } from '../sentences/told.ts';
import { placesIn, untold } from '../sentences/unexamined.ts';
import { seriesTold } from '../sentences/vitals.ts';
import type { Sentence } from '../text.ts';
import { type Chunk, chunks } from './chunks.ts';
import type { RadioOrder } from './keep.ts';
import { asWritten, bare, lineOf, type RadioLine } from './line.ts';
import { scriptOf } from './script.ts';
import { speak } from './speak.ts';
import { spell } from './spelling.ts';

/** Words that are spelt: a name, and a drug that is told by one word. */
function spelt(entries: readonly Entry[]): readonly Told[] {
  const names = ofTopic(entries, 'name').map((entry) => ({ entry, words: entry.text }));
  const drugs = (['allergies', 'medications'] as const)
    .flatMap((topic) => ofTopic(entries, topic))
    .filter(({ present }) => present !== false)
    .map((entry) => ({ entry, words: entry.text.split(/[.,;]/)[0] ?? '' }))
    .filter(({ words }) => /^\p{L}{4,}$/u.test(words.trim()));
  return [...names, ...drugs].flatMap(({ entry, words }) =>
    [...new Set(words.match(/[\p{L}\p{N}]+/gu) ?? [])].map((word) => ({
      words: `${word}, I spell: ${spell(word).join(' ')}`,
      entries: [entry],
    })),
  );
}

function notExamined({ coverage }: HandoffInput): readonly RadioLine[] {
  const named = (title: string, places: readonly string[]): readonly RadioLine[] =>
    places.length === 0 ? [] : [bare(speak(`${title}: ${and(places)}`))];
  return [
    ...named('Not examined', placesIn(coverage, 'not-examined')),
    ...named('Touched, with nothing found or denied there', untold(coverage)),
  ];
}

/** A criterion that is open is no news on the air; one that is met is told with its reason. */
const metCriteria = (input: HandoffInput): readonly Told[] =>
  (['red', 'yellow'] as const)
    .flatMap((level) => metFlags(input, level))
    .map((flag) => ({
      words: `${flag.level === 'red' ? 'Red' : 'Yellow'} criterion in full: ${flag.text.replace(/\s*Local protocol decides\.?$/, '').replace(/\.$/, '')}`,
      entries: input.entries.filter(({ id }) => flag.evidence.includes(id)),
      slots: 'inside',
    }));

function everything(input: HandoffInput, day: Day): readonly RadioLine[] {
  const { entries, now } = input;
  const problems = problemsTold(input, day);
  const lines = (told: readonly Told[]): readonly RadioLine[] => told.map(lineOf);
  const sentences = (said: readonly Sentence[]): readonly RadioLine[] => said.map(asWritten);
  return [
    ...lines(problems),
    ...lines(csmTold(entries, day, true)),
    ...lines(series(entries).map((one) => seriesTold(one, day))),
    ...sentences(missingSigns(entries)),
    ...sentences(scoreSentences(input)),
    ...lines(caresTold(entries, day)),
    ...lines(injuryTimes(entries, day, now)),
    ...lines(complaintTimes(entries)),
    ...lines(TOPICS.map((topic) => topicTold(entries, topic, day)).filter((one) => one !== null)),
    ...lines(spelt(entries)),
    ...lines(denials(entries, day, problems)),
    ...notExamined(input),
    ...lines(metCriteria(input)),
    ...lines(keptTogether(entries, day)),
    ...sentences(doubtSentences(entries)),
  ];
}

/** Further pieces, within the same limits, with all that the short report does not say in the same words. */
export function radioDetails(
  input: HandoffInput,
  order: RadioOrder = 'atmist',
): { readonly chunks: readonly Chunk[] } {
  const day = dayOf(input.startedAt);
  const said = new Set(scriptOf(input, order).said.map(({ words }) => words));
  return { chunks: chunks(everything(input, day).filter(({ words }) => !said.has(words))) };
}
