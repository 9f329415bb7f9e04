// Promises the entries in the order they were true, repeats as series and gaps in talk named, with nothing left out.

export { ageText } from './age.ts';
export { brief } from './brief.ts';
export { clock, type Day, dayOf, isSameMinute, minuteOf } from './clock.ts';
export { GAP_MINUTES, type Gap, gaps } from './gaps.ts';
export { type TimelineInput, type TimelineLine, timelineLines } from './lines.ts';
export { careName, findingName, siteName, sitePlural, topicName, vitalName } from './names.ts';
export { deniesOneAllergy, oneAllergyDenied } from './one-allergy.ts';
export { bySpokenOrder, inOrder } from './order.ts';
export { perMembers } from './per-members.ts';
export { perThing } from './per-thing.ts';
export { readingText } from './reading.ts';
export { type Series, series, seriesText } from './series.ts';
export { timelineText } from './text.ts';
