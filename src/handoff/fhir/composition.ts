// The document's table of contents: every resource of an entry stands in just one section, beside the same in words.

import { type Entry, stands } from '../../record/entry.ts';
import { TOPICS } from '../../terms/index.ts';
import { series } from '../../timeline/index.ts';
import { careSentences } from '../sentences/care.ts';
import { csmSentences } from '../sentences/csm.ts';
import { findingSentence } from '../sentences/finding.ts';
import { flagSentences } from '../sentences/flags.ts';
import { findingGroups } from '../sentences/groups.ts';
import { topicSentences } from '../sentences/history.ts';
import { doubtSentences, keptSentences } from '../sentences/kept.ts';
import { missingSigns, scoreSentences } from '../sentences/signs.ts';
import { noneConfirmed } from '../sentences/trust.ts';
import { fullSeries } from '../sentences/vitals.ts';
import type { Sentence } from '../text.ts';
import { absent, own } from './concept.ts';
import { coverageSentences } from './coverage.ts';
import { LOINC_NOTICE } from './loinc.ts';
import { entryName, type Scene } from './scene.ts';
import { visitSentence } from './sentence.ts';
import type { Composition, Reference, Section } from './shapes.ts';
import { statusOfAll } from './trust.ts';
import { narrative } from './words.ts';

const SECTIONS = [
  'history',
  'allergies',
  'medications',
  'signs',
  'examination',
  'limb-ends',
  'care',
  'coverage',
  'criteria',
  'kept',
] as const;
type SectionName = (typeof SECTIONS)[number];

/** Where an entry belongs; none is left without a place. */
function sectionOf(entry: Entry): SectionName {
  switch (entry.kind) {
    case 'history':
      return entry.topic === 'allergies' || entry.topic === 'medications' ? entry.topic : 'history';
    case 'vital':
      return 'signs';
    case 'finding':
    case 'visit':
      return 'examination';
    case 'csm':
      return 'limb-ends';
    case 'care':
      return 'care';
    case 'mark':
    case 'note':
      return 'kept';
  }
}

const STORY = TOPICS.filter((topic) => topic !== 'allergies' && topic !== 'medications');

function sentences(name: SectionName, { input, day }: Scene): readonly Sentence[] {
  const { entries } = input;
  switch (name) {
    case 'history':
      return STORY.flatMap((topic) => topicSentences(entries, topic, day));
    case 'allergies':
    case 'medications':
      return topicSentences(entries, name, day);
    case 'signs':
      return [
        ...series(entries).map((one) => fullSeries(one, day)),
        ...missingSigns(entries),
        ...scoreSentences(input),
      ];
    case 'examination':
      return [
        ...findingGroups(entries).map((group) => findingSentence(group, day)),
        ...entries
          .filter((entry) => entry.kind === 'visit')
          .filter(stands)
          .map((entry) => visitSentence(entry, day)),
      ];
    case 'limb-ends':
      return csmSentences(entries, day);
    case 'care':
      return careSentences(entries, day);
    case 'coverage':
      return coverageSentences(input.coverage).map((text) => ({ text, entries: [] }));
    case 'criteria':
      return [...flagSentences(input), { text: 'Local protocol decides.', entries: [] }];
    case 'kept':
      return [...keptSentences(entries, day), ...doubtSentences(entries)];
  }
}

/**
 * A section in which nothing was said has the data absent; it is never left out, and never reads as "none". The criteria
 * are told in words alone: what they rest on stands in the other sections.
 */
function section(name: SectionName, entry: readonly Reference[], scene: Scene): Section {
  const said = sentences(name, scene);
  const bare = name !== 'criteria' && said.every(({ entries }) => entries.length === 0);
  const code = own('document', name);
  return {
    title: code.text ?? name,
    code,
    text: narrative(said.length === 0 ? ['Not recorded.'] : said.map(({ text }) => text)),
    ...(entry.length > 0 ? { entry } : bare ? { emptyReason: absent('unknown', 'Not recorded') } : {}),
  };
}

/** What stands in a section besides the resources of entries. */
export interface Besides {
  readonly signs: readonly Reference[];
  readonly coverage: readonly Reference[];
}

export function compositionOf(scene: Scene, besides: Besides): Composition {
  const { input } = scene;
  const standing = input.entries.filter(stands);
  const referred = (name: SectionName): readonly Reference[] => [
    ...standing.filter((entry) => sectionOf(entry) === name).map(({ id }) => scene.refTo(entryName(id))),
    ...(name === 'signs' || name === 'coverage' ? besides[name] : []),
  ];
  return {
    resourceType: 'Composition',
    id: scene.idOf('composition'),
    text: narrative([
      "Left and right are the patient's. What was not examined is listed as such.",
      ...(noneConfirmed(input.entries) ? ['UNCONFIRMED: nothing in this document has been confirmed.'] : []),
      LOINC_NOTICE,
    ]),
    status: statusOfAll(input.entries),
    type: own('document', 'field-examination'),
    subject: scene.patient,
    encounter: scene.encounter,
    date: scene.madeAt,
    author: [scene.responder, scene.refTo('device')],
    title: 'Examination in the field',
    section: SECTIONS.map((name) => section(name, referred(name), scene)),
  };
}
