// When and how it happened, as told: a time that nobody spoke is not recorded, and the time of the telling is none.

import { type Entry, firstTold } from '../../record/entry.ts';
import { clock, type Day, minuteOf } from '../../timeline/index.ts';
import { elapsed } from '../sentences/elapsed.ts';
import { ofTopic, told, topicTold } from '../sentences/history.ts';
import type { Told } from '../sentences/told.ts';

/**
 * The time spoken with the mechanism or the events, with how long ago that is at `now` (milliseconds since the epoch).
 * A time told of the complaint is not taken for it, since a pain may have begun later.
 */
export const injuryTimes = (entries: readonly Entry[], day: Day, now: number): readonly Told[] =>
  [...ofTopic(entries, 'mechanism'), ...ofTopic(entries, 'events')]
    .filter((entry) => minuteOf(entry.at) !== minuteOf(firstTold(entry)))
    .map((entry) => {
      const ago = elapsed(now - Date.parse(entry.at));
      return {
        words: `Time of incident: ${clock(entry.at, day)}${ago === null ? '' : `, ${ago} before this report`}`,
        entries: [entry],
      };
    });

/** What was told of the complaint's own time, for a report in which the time of the incident is not recorded. */
export const complaintTimes = (entries: readonly Entry[]): readonly Told[] =>
  ofTopic(entries, 'time').map((entry) => ({
    words: `Time told of the complaint: ${told(entry)}`,
    entries: [entry],
  }));

/** The mechanism as told, or null. */
export const mechanismTold = (entries: readonly Entry[], day: Day): Told | null =>
  topicTold(entries, 'mechanism', day);

/** The chief complaint and the events before, for a report without a mechanism. */
export const complaintTold = (entries: readonly Entry[], day: Day): readonly Told[] =>
  [topicTold(entries, 'chief-complaint', day), topicTold(entries, 'events', day)].filter(
    (one) => one !== null,
  );
