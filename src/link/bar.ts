// What the bar says: what the post has, in one short sentence, and what stands in the way in plain ones.

import type { SessionState } from './session-parts.ts';

export interface BarWords {
  readonly tone: 'settled' | 'waits' | 'trouble';
  /** one line */
  readonly text: string;
  /** what to know and to do besides; whole sentences */
  readonly more: readonly string[];
}

/** The post is taken to be there as long as it answered within this time, ms: four questions; our choice, no source. */
const LATELY = 60_000;

const minutes = (ms: number): string => {
  const whole = Math.floor(ms / 60_000);
  return whole < 1 ? 'less than a minute' : whole === 1 ? '1 minute' : `${whole} minutes`;
};

const isAre = (count: number): string => (count === 1 ? 'is' : 'are');

/** `now` in epoch ms, by the phone's clock. What is called “at the post” is written on the post's disk. */
export function barWords(state: SessionState, now: number): BarWords {
  const { tally, line, problem, wordAt, troubles, word } = state;
  const open = tally.made - tally.atPost;
  const count = `${tally.atPost} of ${tally.made}`;
  const stays = 'Everything stays on this phone.';
  if (line === 'put-out' && wordAt === null && tally.atPost === 0)
    return {
      tone: 'trouble',
      text: 'The post does not let this phone in.',
      more: [
        `The code is of another incident, or its phone was put out; nothing is sent. ${stays} Ask the post for a fresh code.`,
      ],
    };
  if (line === 'put-out')
    return {
      tone: 'trouble',
      text: `Put out of the incident. At the post: ${count}.`,
      more: [
        `The post no longer lets this phone in; nothing more is sent. ${stays} If that is wrong, ask the post for a fresh code.`,
      ],
    };
  if (problem === 'code-in-use')
    return {
      tone: 'trouble',
      text: 'Another phone uses this code: nothing is sent.',
      more: [`Each phone needs a code of its own; ask the post for a fresh one. ${stays}`],
    };
  if (problem === 'other-history')
    return {
      tone: 'trouble',
      text: 'The post has other words under this phone’s name: nothing more is sent.',
      more: [
        `What the post has under this code is not what this phone sent. Leave the incident here and join by a fresh code: then all is sent anew. ${stays}`,
      ],
    };
  const cut = line !== 'connected';
  const silent = !cut && (wordAt === null || now - wordAt > LATELY);
  const more = [
    ...(cut ? ['There is no connection; it is tried again by itself.'] : []),
    ...(silent
      ? [
          wordAt === null
            ? 'The post has not answered yet.'
            : `The post has not answered for ${minutes(now - wordAt)}; the server is there.`,
        ]
      : []),
    ...(tally.waiting > 0 ? [`${tally.waiting} ${isAre(tally.waiting)} on this phone only.`] : []),
    ...(tally.onVehicle > 0
      ? [
          `${tally.onVehicle} ${isAre(tally.onVehicle)} on the server of ${tally.vehicle}, and not at the post yet.`,
        ]
      : []),
    ...(tally.onServer > tally.onVehicle
      ? [
          `${tally.onServer - tally.onVehicle} ${isAre(tally.onServer - tally.onVehicle)} on the server, and not known to be written at the post.`,
        ]
      : []),
    ...troubles,
    ...(word?.troubles ?? []).map((trouble) => `The post says: ${trouble}.`),
  ];
  const isTrouble = troubles.length > 0 || (word?.troubles.length ?? 0) > 0;
  if (tally.made === 0)
    return {
      tone: cut || silent ? 'waits' : 'settled',
      text: cut ? 'Team: no connection. Nothing to send yet.' : 'Team: nothing to send yet.',
      more,
    };
  const all = open === 0;
  const text = all ? `At the post: all ${tally.made}.` : `At the post: ${count}.`;
  const why = all
    ? cut
      ? ' No connection now.'
      : ''
    : cut
      ? ` ${open} wait: no connection.`
      : silent
        ? ` ${open} wait: the post is silent.`
        : ` ${open} on the way.`;
  return { tone: isTrouble ? 'trouble' : all ? 'settled' : 'waits', text: `${text}${why}`, more };
}
