// When and how it happened, as told: a time that nobody spoke is not recorded, and the time of the telling is none.

import { tellsFound } from '../../clinical/index.ts';
import { type Entry, firstTold, stands } from '../../record/entry.ts';
import { clock, type Day, minuteOf } from '../../timeline/index.ts';
import { elapsed } from '../sentences/elapsed.ts';
import { type HistoryEntry, ofTopic, told, topicTold } from '../sentences/history.ts';
import type { Told } from '../sentences/told.ts';

const isTimed = (entry: HistoryEntry): boolean => minuteOf(entry.at) !== minuteOf(firstTold(entry));

/** Whether a time was spoken with this mechanism, and is that of the incident. */
export const timesIncident = (entry: HistoryEntry): boolean =>
  entry.topic === 'mechanism' && isTimed(entry) && !tellsFound(entry.text);

/**
 * The time spoken with the mechanism, with how long ago that is at `now` (milliseconds since the epoch). A time told of
 * the complaint is not taken for it, since a pain may have begun later; nor one of a collapse, a fit or another event,
 * which may have come after it: that is told as what it is.
 */
export const injuryTimes = (entries: readonly Entry[], day: Day, now: number): readonly Told[] =>
  ofTopic(entries, 'mechanism')
    .filter(timesIncident)
    .map((entry) => {
      const ago = elapsed(now - Date.parse(entry.at));
      return {
        words: `Time of incident: ${clock(entry.at, day)}${ago === null ? '' : `, ${ago} before this report`}`,
        entries: [entry],
      };
    });

/** A collapse, a fit and the like that came at a time of their own, earliest first. */
export const timedEvents = (entries: readonly Entry[]): readonly HistoryEntry[] =>
  ofTopic(entries, 'events').filter((entry) => isTimed(entry) && entry.present !== false);

const ARREST =
  /\b(arrest(ed)?|r ?o ?s ?c|return of spontaneous circulation|shocks?|shocked|defibrillated|stopped)\b/i;

/** A heart that stopped, shocks and what came of them, as they were told while it happened; earliest first. */
export const arrests = (entries: readonly Entry[]): readonly HistoryEntry[] =>
  ofTopic(entries, 'events').filter(
    (entry) => !isTimed(entry) && entry.present !== false && ARREST.test(entry.text),
  );

/** All that was told of events, or null. */
export const eventsTold = (entries: readonly Entry[], day: Day): Told | null =>
  topicTold(entries, 'events', day);

/** More than this after an event, a time that is told may be of anything; no source. */
const STILL_OF_EVENT_MS = 60_000;

/** The event told straight before, whose length the words then are: "he had a seizure, lasted two minutes". */
function eventBefore(entries: readonly Entry[], entry: HistoryEntry): HistoryEntry | null {
  const said = entries.filter(stands);
  const before = said[said.indexOf(entry) - 1];
  const isEvent = before?.kind === 'history' && before.topic === 'events' && before.present !== false;
  return isEvent && Date.parse(entry.heardAt) - Date.parse(before.heardAt) <= STILL_OF_EVENT_MS
    ? before
    : null;
}

/** What was told of the complaint's own time, for a report in which the time of the incident is not recorded; that of an event is told as its. */
export const complaintTimes = (entries: readonly Entry[]): readonly Told[] =>
  ofTopic(entries, 'time').map((entry) => {
    const event = eventBefore(entries, entry);
    return event === null
      ? { words: `Time told of the complaint: ${told(entry)}`, entries: [entry] }
      : { words: `Time told of the event “${told(event)}”: ${told(entry)}`, entries: [event, entry] };
  });

/** When it began, or when the patient was last known well; null where nobody said. */
export const onsetTold = (entries: readonly Entry[], day: Day): Told | null =>
  topicTold(entries, 'onset', day);

/** The mechanism as told, or null. */
export const mechanismTold = (entries: readonly Entry[], day: Day): Told | null =>
  topicTold(entries, 'mechanism', day);

/** The chief complaint, for a report without a mechanism. */
export const complaintTold = (entries: readonly Entry[], day: Day): Told | null =>
  topicTold(entries, 'chief-complaint', day);
