// Everything else that a short report may say, each in few words with the entries it tells.

import type { Entry } from '../../record/entry.ts';
import { type Region, regionOf, type Vital } from '../../terms/index.ts';
import { clock, type Day, readingText, type Series, series, vitalName } from '../../timeline/index.ts';
import type { HandoffInput } from '../input.ts';
import { arrests, complaintTold, injuryTimes, timedEvents, timesIncident } from '../parts/incident.ts';
import { denials } from '../parts/injuries.ts';
import { arrivals, needs } from '../parts/needs.ts';
import { burnedShare } from '../sentences/burns.ts';
import { shortCriterion } from '../sentences/criterion-words.ts';
import { csmTold } from '../sentences/csm.ts';
import { metFlags } from '../sentences/flags.ts';
import { type HistoryEntry, ofTopic, told, topicTold, unsettled } from '../sentences/history.ts';
import { and, capital, once } from '../sentences/list.ts';
import type { Told } from '../sentences/told.ts';
import { numberOf } from '../sentences/vitals.ts';
import { abnormalTold } from './abnormal.ts';
import type { Keep } from './keep.ts';
import { shortCare } from './short-care.ts';
import { timedWords, withoutAgo } from './timed-words.ts';

export interface Candidate {
  readonly keep: Keep;
  readonly told: Told;
  /** fewer words of the same; left out where it has few already */
  readonly brief?: Told;
}

/** `Age 41, male`; two answers to one question are both given, and one that was not given is passed over. */
export function shortWho(entries: readonly Entry[]): Told | null {
  const ages = ofTopic(entries, 'age');
  const sexes = ofTopic(entries, 'sex');
  const said = [
    ...ages.map((entry) => `age ${told(entry).replace(/ years?$/, '')}`),
    ...sexes.map((entry) => told(entry)),
    ...unsettled(entries, 'age'),
    ...unsettled(entries, 'sex'),
  ];
  return said.length === 0
    ? null
    : { words: capital([...new Set(said)].join(', ')), entries: [...ages, ...sexes] };
}

/** "Has a bad nut allergy" behind "Allergies:" is "bad nut". */
const AROUND =
  /^(?:(?:he|she|they|i|patient) )?(?:has|have|had|with|got)? ?(?:got )?(?:an? )?(?:known )?(.*\p{L}{3}.*) allerg(?:y|ies)$/iu;

/** What each allergy is to, without the sentences after it ("I come out in a rash"). */
function shortAllergies(entries: readonly Entry[], day: Day): Told {
  const known = ofTopic(entries, 'allergies').filter(({ present }) => present !== false);
  const words = known.map((entry) =>
    (told(entry).split(/(?<=\p{L}{3})[.;!?]\s/u)[0] ?? '').replace(AROUND, '$1'),
  );
  const whole = topicTold(entries, 'allergies', day);
  return { words: `Allergies: ${once(words).join(', ')}`, entries: whole?.entries ?? known };
}

/** Words of a mechanism that still leave room for the injuries. */
const MECHANISM_WORDS = 16;

/** Lower is told rather: confirmed, said as the mechanism, the responder's own words rather than "I …", not too long. */
const preference = (entry: HistoryEntry): readonly number[] => [
  Number(entry.state !== 'confirmed'),
  Number(/^i\b/i.test(told(entry))),
  Number(entry.known?.topic !== undefined),
  Number(told(entry).split(' ').length > MECHANISM_WORDS),
  -told(entry).length,
];

/** One telling of the mechanism; the others are further details. */
function shortMechanism(entries: readonly Entry[], day: Day): readonly Told[] {
  const [best] = [...ofTopic(entries, 'mechanism')].sort((one, other) => {
    const theirs = preference(other);
    return preference(one).reduce((sum, value, index) => sum || value - (theirs[index] ?? 0), 0);
  });
  if (best === undefined) return [];
  // The time of the incident stands by itself.
  const words = timesIncident(best) ? withoutAgo(told(best)) : timedWords(best, day);
  return [{ words: capital(words), entries: [best] }];
}

/** What is told in place of a mechanism where none was said: what the patient complains of, and since when. */
function shortComplaint(input: HandoffInput, day: Day): readonly Told[] {
  const { entries, now } = input;
  if (ofTopic(entries, 'mechanism').length > 0) return [];
  const isIll = ofTopic(entries, 'symptoms').some(({ present }) => present !== false);
  const complaint = complaintTold(entries, day) ?? (isIll ? topicTold(entries, 'symptoms', day) : null);
  const since = injuryTimes(entries, day, now).length > 0 ? null : topicTold(entries, 'onset', day);
  return [complaint, since].filter((one) => one !== null);
}

/** `Saturation 93% on air`, `Responds to voice`: in fewer words than the written name. */
function shortReading(vital: Vital, text: string): string {
  if (vital === 'responsiveness') return capital(text);
  if (vital === 'oxygen-saturation') return `Saturation ${text.replace('without oxygen', 'on air')}`;
  return `${vitalName(vital)} ${text}`;
}

const last = ({ vital, readings }: Series): readonly Told[] => {
  const reading = readings.at(-1);
  return reading === undefined
    ? []
    : [{ words: shortReading(vital, readingText(reading)), entries: [reading] }];
};

const AVPU = ['A', 'V', 'P', 'U'];

/** `Worst: responds to pain at 13:56`, where the last is better. */
function worstResponse({ readings }: Series, day: Day): readonly Told[] {
  const rank = (reading: Series['readings'][number] | undefined): number =>
    reading?.vital === 'responsiveness' ? AVPU.indexOf(reading.value.avpu ?? '') : -1;
  const worst = Math.max(...readings.map(rank));
  const reading = readings.find((one) => rank(one) === worst);
  const ends = readings.findLast((one) => rank(one) >= 0);
  return reading === undefined || rank(ends) === worst
    ? []
    : [{ words: `Worst: ${readingText(reading)} at ${clock(reading.at, day)}`, entries: [reading] }];
}

/** `Incident 15:00, 31 minutes ago` */
const shortTimes = ({ entries, now }: HandoffInput, day: Day): readonly Told[] =>
  injuryTimes(entries, day, now).map((one) => ({
    ...one,
    words: one.words.replace(/^Time of incident: /, 'Incident ').replace(/ before this report$/, ' ago'),
  }));

/** `Burns 13.5% of the body's surface`: reckoned from the burns that were found. */
function burnedSurface(input: HandoffInput): readonly Told[] {
  const share = burnedShare(input);
  if (share === null) return [];
  const but = share.but === null ? '' : `, ${share.but}`;
  return [
    {
      words: `Burns about ${Math.round(share.percent)}% of the body${but}`,
      entries: share.entries,
      slots: [],
    },
  ];
}

/** The values that are asked back, where they were not taken: silence would be heard as nothing wrong. */
function missing(entries: readonly Entry[]): readonly Told[] {
  const taken = new Set(series(entries).map(({ vital }) => vital));
  const names = TRENDS.filter((vital) => !taken.has(vital)).map((vital) =>
    vital === 'gcs' ? 'GCS' : vital.replace('blood-', ''),
  );
  return names.length === 0 ? [] : [{ words: `Not recorded: ${and(names)}`, entries: [] }];
}

const BREATHING = ['respirations', 'oxygen-saturation'] as const;
const TRENDS = ['pulse', 'blood-pressure', 'gcs'] as const;

/** `First pulse 98 at 13:52`, where the last is another. */
function firstReading({ vital, readings }: Series, day: Day): readonly Told[] {
  const first = readings[0];
  const now = readings.at(-1);
  if (first === undefined || now === undefined || numberOf(first) === numberOf(now)) return [];
  const bare = first.vital === 'pulse' || first.vital === 'gcs' ? numberOf(first) : null;
  const value = bare === null ? readingText(first) : `${bare}`;
  const name = vital === 'gcs' ? 'GCS' : vitalName(vital).toLowerCase();
  // "GCS" leads where its parts are told: by it their letters are spoken as words.
  const title = bare === null && vital === 'gcs' ? 'GCS at first' : `First ${name}`;
  return [{ words: `${title} ${value} at ${clock(first.at, day)}`, entries: [first] }];
}

/** Regions whose denials are worth air time; common practice, no source. */
const CORE: readonly Region[] = ['neck', 'chest', 'abdomen', 'pelvis', 'back'];

function shortDenials(input: HandoffInput, day: Day): readonly Told[] {
  const core = input.entries.filter(
    (entry) => entry.kind === 'finding' && CORE.includes(regionOf(entry.site)),
  );
  return [...csmTold(input.entries, day, true).slice(0, 1), ...denials(core, day, [])];
}

const as =
  (keep: Keep) =>
  (one: Told): Candidate => ({ keep, told: one });

/** All that may be said besides who, the critical values and the problems, in the order of each kind. */
export function candidates(input: HandoffInput, day: Day): readonly Candidate[] {
  const { entries } = input;
  const all = series(entries);
  const of = (vital: string): readonly Series[] => all.filter((one) => one.vital === vital);
  const topic = (name: 'allergies' | 'medications' | 'past-history'): readonly Told[] => {
    const one = topicTold(entries, name, day);
    return one === null ? [] : [one];
  };
  const allergic = ofTopic(entries, 'allergies').some(({ present }) => present !== false);
  const yellow = metFlags(input, 'yellow').map((flag): Told => {
    const evidence = entries.filter(({ id }) => flag.evidence.includes(id));
    return { words: `Yellow criterion: ${shortCriterion(flag)}`, entries: evidence, slots: 'inside' };
  });
  return [
    ...missing(entries).map(as('breathing')),
    ...shortTimes(input, day).map(as('time')),
    ...shortMechanism(entries, day).map(as('mechanism')),
    ...shortComplaint(input, day).map(as('mechanism')),
    ...timedEvents(entries).map((one) =>
      as('event')({ words: capital(timedWords(one, day)), entries: [one] }),
    ),
    ...arrests(entries).map((one) =>
      as('event')({ words: `${capital(told(one))} at ${clock(one.at, day)}`, entries: [one] }),
    ),
    ...burnedSurface(input).map(as('worst')),
    ...abnormalTold(entries, day),
    ...BREATHING.flatMap((vital) => of(vital).flatMap(last)).map(as('breathing')),
    // Whoever has a GCS is told how awake the patient is by that.
    ...of('responsiveness')
      .flatMap((one) => [...last(one), ...worstResponse(one, day)])
      .map(as(of('gcs').length > 0 ? 'trend' : 'breathing')),
    ...TRENDS.flatMap((vital) => of(vital).flatMap((one) => firstReading(one, day))).map(as('trend')),
    ...shortCare(input, day).map((one): Candidate => ({ keep: 'treatment', ...one })),
    ...topic('allergies').map((one) => ({
      ...as(allergic ? 'allergy' : 'history')(one),
      ...(allergic ? { brief: shortAllergies(entries, day) } : {}),
    })),
    ...topic('medications').map(as('medication')),
    ...topic('past-history').map(as('history')),
    ...arrivals(entries, day).map(as('arrival')),
    ...needs(entries, day).map(as('needs')),
    ...yellow.map(as('yellow')),
    ...shortDenials(input, day).map(as('denial')),
  ];
}
