// The patient as told: a name and a sex only where they were said, and marked as unconfirmed until they are not.

import type { Entry } from '../../record/entry.ts';
import { ofTopic } from '../sentences/history.ts';
import { UNSAID } from './concept.ts';
import type { Scene } from './scene.ts';
import { sentenceOf } from './sentence.ts';
import type { Patient } from './shapes.ts';
import { trustTag } from './trust.ts';
import { narrative, plainWords } from './words.ts';

type HistoryEntry = Extract<Entry, { kind: 'history' }>;

const GENDERS = [
  ['female', /\b(female|woman|girl|lady)\b/i],
  ['male', /\b(male|man|boy|gentleman)\b/i],
] as const;

/** `unknown` where none was told in a word known here, or two that differ were. */
export function genderOf(told: readonly HistoryEntry[]): Patient['gender'] {
  const found = told.flatMap(({ text }) =>
    /\b(not|no)\b/i.test(text)
      ? []
      : GENDERS.filter(([, words]) => words.test(text)).map(([gender]) => gender),
  );
  const [first] = found;
  return first !== undefined && found.every((gender) => gender === first) ? first : 'unknown';
}

const toldOf = (scene: Scene, topic: 'name' | 'sex'): readonly HistoryEntry[] =>
  ofTopic(scene.input.entries, topic).filter(
    ({ present, text }) => present !== false && plainWords(text) !== null,
  );

/** Two names that were told are both given; one that nobody has confirmed is for temporary use. */
export function patientOf(scene: Scene): Patient {
  const names = toldOf(scene, 'name');
  const sexes = toldOf(scene, 'sex');
  const used = [...names, ...sexes];
  const unsure = used.find(({ state }) => state === 'heard') ?? used[0];
  return {
    resourceType: 'Patient',
    id: scene.idOf('patient'),
    ...(unsure === undefined ? {} : { meta: { tag: [trustTag(unsure)] } }),
    text: narrative(
      used.length === 0 ? ['Name and sex not recorded.'] : used.map((entry) => sentenceOf(entry, scene.day)),
    ),
    name:
      names.length === 0
        ? [UNSAID]
        : names.map(({ text, state }) => ({
            ...(state === 'heard' ? { use: 'temp' as const } : {}),
            text: plainWords(text) ?? '',
          })),
    gender: genderOf(sexes),
  };
}
