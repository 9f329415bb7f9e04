// The signs that both spine rules ask for, each as a three-valued answer.

import type { Site } from '../../terms/index.ts';
import { type Answer, any, no, unknown, yes } from '../answer.ts';
import { breaksAt } from '../broken.ts';
import { type Chart, vitalsOf } from '../chart.ts';
import { isImpaired } from '../limb-end.ts';
import { foundAt, foundWithin } from '../said.ts';
import { gcsReadings } from '../score/gcs.ts';
import { EVENT_TOPICS, mentionOf } from '../told/mention.ts';
import { intactInAllFour, neurologicalLoss } from '../triage/loss.ts';

/** Tenderness on the cervical spine itself; a tender neck of which the middle was not said is unknown. */
export function midlineTenderness(chart: Chart): Answer {
  const met = [
    ...foundAt(chart, ['cervical-spine'], ['tenderness']),
    ...foundAt(chart, ['neck'], ['tenderness']).filter(
      (entry) => entry.side === 'midline' || (entry.part ?? []).includes('posterior'),
    ),
  ];
  if (met.length > 0) return yes(met, 'tender');
  const vague = [
    ...foundAt(chart, ['neck', 'spine'], ['tenderness']),
    ...foundAt(chart, ['cervical-spine', 'neck'], ['pain']),
  ];
  if (vague.length > 0) return unknown(['whether the neck is tender in the midline behind'], vague);
  const denied = [...chart.denied('tenderness'), ...chart.denied('abnormality')].filter(
    (entry) =>
      entry.site === 'cervical-spine' ||
      entry.site === 'spine' ||
      (entry.site === 'neck' && entry.side === 'midline'),
  );
  return denied.length > 0 ? no(denied, 'not tender') : unknown(['midline tenderness of the neck']);
}

/** A focal deficit: any loss, asymmetry of the face; absent only with sensation and motion intact in all four. */
export function focalDeficit(chart: Chart): Answer {
  const loss = chart.ask(neurologicalLoss);
  const face = foundAt(chart, ['face', 'mouth'], ['asymmetry', 'numbness', 'weakness', 'paralysis']);
  return face.length > 0 ? any([loss, yes(face, 'face')]) : loss;
}

/** GCS under 15, not alert, or not oriented; absent needs a GCS of 15 and orientation to all four. */
export function alteredAlertness(chart: Chart): Answer {
  const scores = chart.ask(gcsReadings);
  const low = scores.filter(
    (reading) =>
      (reading.total !== null && reading.total < 15) ||
      (typeof reading.eye === 'number' && reading.eye < 4) ||
      (typeof reading.verbal === 'number' && reading.verbal < 5) ||
      (typeof reading.motor === 'number' && reading.motor < 6),
  );
  const said = vitalsOf(chart, 'responsiveness');
  const dull = said.filter(
    (entry) =>
      (entry.value.avpu !== undefined && entry.value.avpu !== 'A') || (entry.value.orientation ?? 4) < 4,
  );
  const evidence = [...low.flatMap((reading) => reading.entries), ...dull];
  if (evidence.length > 0) return yes(evidence, 'GCS under 15, not alert, or not oriented');
  const full = scores.filter((reading) => reading.total === 15).flatMap((reading) => reading.entries);
  const oriented = said.filter((entry) => entry.value.orientation === 4);
  const missing = [
    ...(full.length === 0 ? ['GCS'] : []),
    ...(oriented.length === 0 ? ['orientation to person, place, time and event'] : []),
  ];
  return missing.length > 0
    ? unknown(missing, [...full, ...oriented])
    : no([...full, ...oriented], 'GCS 15, oriented times 4');
}

const DRUNK = /\b(?:intoxicat\w*|drunk|inebriated|high on)\b/;
const DRINK =
  /\b(?:alcohol|beers?|wine|whisk(?:e)?y|vodka|liquor|drinks|drinking|weed|cannabis|opioids?|sedatives?)\b/;

/** Intoxication as said; a drink that was mentioned only asks. */
export function intoxication(chart: Chart): Answer {
  const topics = [...EVENT_TOPICS, 'symptoms', 'last-intake', 'past-history', 'medications'] as const;
  const drunk = mentionOf(chart, topics, DRUNK);
  const drink = mentionOf(chart, topics, DRINK);
  if (drunk.said.length > 0) return yes(drunk.said, 'intoxicated');
  const open = [...drunk.hinted, ...drink.said, ...drink.hinted];
  if (open.length > 0) return unknown(['whether intoxicated'], open);
  const denied = [...drunk.denied, ...drink.denied];
  return denied.length > 0 ? no(denied, 'denied') : unknown(['whether intoxicated']);
}

const LONG_BONES: readonly Site[] = ['upper-arm', 'forearm', 'thigh', 'lower-leg'];

/** A painful distracting injury; absent only where no injury was found and the pain is 0. */
export function distractingInjury(chart: Chart): Answer {
  const met = [
    ...breaksAt(chart, LONG_BONES),
    ...chart.found('avulsion'),
    ...chart.found('amputation'),
    ...chart.found('pain').filter((entry) => entry.severity === 'severe' || Number(entry.severity) >= 7),
  ];
  if (met.length > 0) return yes(met, 'painful injury');
  const injuries = chart.found();
  const pain = vitalsOf(chart, 'pain-score').at(-1);
  if (injuries.length > 0) return unknown(['whether another injury is painful enough to distract'], injuries);
  return pain?.value.score === 0
    ? no([pain], 'no injury found, pain 0')
    : unknown(['whether another injury is painful enough to distract']);
}

/** Tingling or numbness in a limb; absent only where sensation is intact in all four. */
export function paraesthesia(chart: Chart): Answer {
  const met = [
    ...foundWithin(chart, ['arm', 'leg'], ['tingling', 'numbness']),
    ...chart.csm.filter((entry) => entry.aspect === 'sensation' && isImpaired(entry)),
  ];
  if (met.length > 0) return yes(met, 'tingling or numbness');
  const intact = intactInAllFour(chart, ['sensation']);
  return intact.truth === 'yes'
    ? no(intact.evidence, 'sensation intact in all four')
    : unknown(intact.missing);
}
