// The criteria that the mechanism decides, read from what was told of it; a mechanism that was not told is unknown.

import type { Entry } from '../../record/entry.ts';
import { type Answer, all, any, no, unknown, yes } from '../answer.ts';
import type { Chart } from '../chart.ts';
import { foundAt } from '../said.ts';
import { fallIn } from '../told/fall.ts';
import { FALL } from '../told/fall-words.ts';
import { inchesIn } from '../told/height.ts';
import { answerOf, EVENT_TOPICS, mentionOf } from '../told/mention.ts';
import { ageBetween } from './readings.ts';

const told =
  (pattern: RegExp, question: string, because: string) =>
  (chart: Chart): Answer =>
    answerOf(mentionOf(chart, EVENT_TOPICS, pattern), question, because);

const VEHICLE = 'car|vehicle|truck|van|jeep|pick-?up|windscreen|windshield|window';

export const ejection = told(
  new RegExp(
    `\\beject(?:ed|ion)\\b|\\bthrown (?:out of|from|through) (?:the|a|his|her|their) (?:${VEHICLE})\\b`,
  ),
  'whether anyone was ejected from a vehicle',
  'ejected',
);

const EXTRICATED =
  /\bextricat\w*|\bcut (?:out|free)\b|\b(?:trapped|pinned|entrapped)\b[^.]*\b(?:car|vehicle|truck|van|cab)\b|\bentrapped\b/;
const INTRUSION_INCHES = 12;
const INTRUSION_ANYWHERE_INCHES = 18;

/** Intrusion over 12 inches where the patient sat or over 18 anywhere, or an entrapped patient to be cut free. */
export function intrusion(chart: Chart): Answer {
  const freed = answerOf(
    mentionOf(chart, EVENT_TOPICS, EXTRICATED),
    'whether extrication was needed',
    'extrication',
  );
  const mention = mentionOf(chart, EVENT_TOPICS, /\bintru(?:sion|ded)\b/);
  const bent = answerOf(mention, 'how far the passenger space was pushed in', 'intrusion');
  if (bent.truth !== 'yes') return any([freed, bent]);
  const most = Math.max(...bent.evidence.map((entry) => inchesIn(textOf(entry)) ?? -1));
  const measured =
    most > INTRUSION_ANYWHERE_INCHES
      ? yes(bent.evidence, `intrusion of ${Math.round(most)} inches`)
      : most > INTRUSION_INCHES
        ? unknown(['whether the intrusion was where the patient sat'], bent.evidence)
        : most >= 0
          ? no(bent.evidence, `intrusion of ${Math.round(most)} inches`)
          : unknown(['how many inches of intrusion'], bent.evidence);
  return any([freed, measured]);
}

const textOf = (entry: Entry): string => ('text' in entry && entry.text !== undefined ? entry.text : '');

export const deathInVehicle = told(
  /\b(?:passenger|driver|occupant|brother|sister|wife|husband|mother|father|mum|mom|dad|friend|son|daughter)s?\b[^.]*\b(?:dead|died|killed|deceased|fatal\w*)\b/,
  'whether anyone in the vehicle died',
  'death in the passenger compartment',
);

const UNRESTRAINED =
  /\bunrestrained\b|\bunbelted\b|\bunsecured\b|\b(?:not|no|wasn't|without(?: an?)?) (?:wearing )?(?:an? )?(?:belted|buckled|restrained|strapped|seat ?belt|child seat|car seat|safety seat)\b/;
const RESTRAINED =
  /\b(?:restrained|belted|buckled|strapped) in\b|\bin (?:a|the|his|her) (?:car|child|safety) seat\b/;

/** A child of 0 to 9 unrestrained. The words themselves carry the negation, so they are looked for as they stand. */
export function unrestrainedChild(chart: Chart): Answer {
  const events = EVENT_TOPICS.flatMap((topic) => chart.told(topic)).filter(
    (entry) => entry.present !== false,
  );
  const loose = events.filter((entry) => UNRESTRAINED.test(entry.text.toLowerCase()));
  const held = events.filter((entry) => RESTRAINED.test(entry.text.toLowerCase()));
  const belt =
    loose.length > 0
      ? yes(loose, 'unrestrained')
      : held.length > 0
        ? no(held, 'restrained')
        : unknown(['whether a child was unrestrained in a vehicle']);
  return all([ageBetween(chart, 0, 9), belt]);
}

export const telemetry = (chart: Chart): Answer => {
  const named = mentionOf(chart, EVENT_TOPICS, /\btelemetry\b/);
  return unknown(['what the vehicle telemetry says'], [...named.said, ...named.hinted]);
};

const FORCE =
  /\b(?:thrown|flung|launched|catapulted|bucked|over the (?:handle)?bars|run over|ran over|dragged)\b/;
const RIDE =
  /\b(?:motor ?(?:cycle|bike)|dirt bike|moped|scooter|quad(?: bike)?|atv|four[- ]wheeler|snow ?(?:mobile|machine)|horse|pony|jet ski)\b/;
const OFF = /\b(?:fell|came|come|knocked|slid|off|crash\w*|separated|fall)\b/;
const AFOOT =
  /\b(?:pedestrian|on foot|walking|cycl(?:ist|ing)|bicycles?|bicyclist|push ?bike|mountain bik(?:e|er|ing)|bik(?:e|er|ing)|handle ?bars)\b/;
const STRUCK = /\b(?:hit|struck|knocked|collided|collision|crash\w*)\b/;

/** Both words in one telling decide by force: thrown or run over is met, a plain fall or blow asks for the impact. */
function forceful(chart: Chart, who: RegExp, how: RegExp, question: string, not?: RegExp): Answer {
  const mention = mentionOf(chart, EVENT_TOPICS, who);
  const told = mention.said.filter((entry) => not === undefined || !not.test(textOf(entry).toLowerCase()));
  const parted = told.filter((entry) => FORCE.test(textOf(entry).toLowerCase()));
  if (parted.length > 0) return yes(parted, textOf(parted[0] as Entry));
  const open = told.filter((entry) => how.test(textOf(entry).toLowerCase()));
  if (open.length > 0) return unknown(['whether the impact was significant'], open);
  return unknown([question], [...told, ...mention.hinted]);
}

export const riderSeparated = (chart: Chart): Answer =>
  forceful(chart, RIDE, OFF, 'whether a rider was separated from the vehicle or animal');

export const pedestrianOrCyclist = (chart: Chart): Answer =>
  forceful(
    chart,
    new RegExp(`(?<!motor ?|dirt |quad )${AFOOT.source}`),
    STRUCK,
    'whether hit on foot or on a bicycle',
    RIDE,
  );

const LIMIT_FEET = 10;

/** A fall from where one stands or sits on the ground is of no height. */
const FROM_STANDING = /\bfrom (?:a )?(?:standing|ground level|kneeling)\b|\b(?:ground|same)[- ]level fall\b/;
const FROM_HIGHER = /\b(?:off|down|over|into|cliff|roof|ladder|tree|ledge)\b/;

const FELL = 'whether the patient fell, and how far';

/** What was told of the patient's fall, with the feet that belong to it; what fell on somebody leaves it open. */
function falls(chart: Chart): { readonly fall: Answer; readonly feet: number | null } {
  const mention = mentionOf(chart, EVENT_TOPICS, FALL);
  const told = mention.said.map((entry) => ({ entry, told: fallIn(textOf(entry)) }));
  const own = told.filter((each) => each.told?.ofPatient === true);
  if (told.length > 0 && own.length === 0)
    return { fall: unknown([FELL], [...mention.said, ...mention.hinted]), feet: null };
  const said = own.map(({ entry }) => entry);
  const fall = answerOf({ ...mention, said }, 'whether there was a fall, and how far', 'fall');
  const feet = own.flatMap(({ entry, told }) => {
    const text = textOf(entry).toLowerCase();
    return told?.feet ?? (FROM_STANDING.test(text) && !FROM_HIGHER.test(text) ? 0 : []);
  });
  return { fall, feet: feet.length === 0 ? null : Math.max(...feet) };
}

/** A height in metres comes with a rounding error that must not lift 10 feet over the limit. */
const isHigh = (feet: number): boolean => feet > LIMIT_FEET + 1e-6;

/** A fall from more than 10 feet, at any age. */
export function highFall(chart: Chart): Answer {
  const { fall, feet } = falls(chart);
  if (fall.truth !== 'yes') return fall;
  if (feet === null) return unknown(['how far the fall was'], fall.evidence, 'fall');
  const because = feet === 0 ? 'fall from standing' : `fall of about ${Math.round(feet)} feet`;
  return isHigh(feet) ? yes(fall.evidence, because) : no(fall.evidence, because);
}

const HEAD_STRUCK =
  /\b(?:hit|struck|banged|bumped|knocked|landed on)\b[^.,]*\b(?:head|face|forehead)\b|\bhead (?:injury|strike|trauma|impact)\b/;

const NO_HEAD_INJURY = /\b(?:no|without|denies) (?:any )?head (?:injury|injuries|strike|trauma|impact)\b/i;

const HEAD_MARKS = ['deformity', 'contusion', 'laceration', 'swelling', 'abrasion', 'bleeding'] as const;

/** A low fall with significant head impact at 5 and under or 65 and over; one over the limit of a high fall is none. */
export function lowFall(chart: Chart): Answer {
  const age = any([ageBetween(chart, 0, 5), ageBetween(chart, 65, Number.POSITIVE_INFINITY)]);
  const { fall: fell, feet } = falls(chart);
  const fall =
    feet !== null && isHigh(feet) ? no(fell.evidence, `fall of about ${Math.round(feet)} feet`) : fell;
  const struck = mentionOf(chart, EVENT_TOPICS, HEAD_STRUCK);
  const marks = foundAt(chart, ['head', 'skull', 'face', 'forehead'], HEAD_MARKS);
  const blow = answerOf(struck, 'whether the head was hit hard', 'head struck');
  // "No head injury" is heard as a head of which nothing was found; that words of a blow were meant is in what was said.
  const spared = chart
    .at('head')
    .filter((entry) => entry.kind === 'finding' && !entry.present && NO_HEAD_INJURY.test(entry.heard));
  const unhurt = blow.truth === 'unknown' && spared.length > 0 ? no(spared, 'no head injury') : blow;
  const head = blow.truth === 'yes' ? blow : marks.length > 0 ? yes(marks, 'marks on the head') : unhurt;
  return all([age, fall, head]);
}
