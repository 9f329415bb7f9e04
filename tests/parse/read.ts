// Reads lines of talk through the real grammar and gives each frame as one short line that a row of a test can hold.

import type { CorrectionFrame, Frame, StatementFrame } from '../../src/parse/index.ts';
import type { Statement } from '../../src/terms/index.ts';
import { realReader } from '../talk-case.ts';

/** When the talk of a row begins: an invented afternoon, two minutes past two in the fixed zone of the rows. */
export const BEGINS = Date.UTC(2026, 4, 3, 20, 2, 0);
const ZONE = '-06:00';
const BETWEEN = 4000;

const reader = realReader();

/** The frames of utterances that follow one another; `|` parts them. */
export function framesOf(talk: string): readonly Frame[] {
  let context = reader.begin();
  return talk.split('|').flatMap((text, i) => {
    const utterance = { text: text.trim(), heardAt: BEGINS + i * BETWEEN, zone: ZONE };
    const reading = reader.read(utterance, context);
    context = reading.context;
    return reading.frames;
  });
}

/** The statements among the frames. */
export const statementsOf = (talk: string): readonly StatementFrame[] =>
  framesOf(talk).filter((frame) => frame.frame === 'statement');

/** The statements of these kinds, each as one line. */
export const read = (talk: string, ...kinds: readonly Statement['kind'][]): readonly string[] =>
  statementsOf(talk)
    .map(({ statement }) => statement)
    .filter(({ kind }) => kinds.length === 0 || kinds.includes(kind))
    .map(line);

/** The corrections, each as one line: what it changes, and behind ← what it means. */
export const corrections = (talk: string): readonly string[] =>
  framesOf(talk)
    .filter((frame) => frame.frame === 'correction')
    .map(correctionLine);

/** `no swelling left knee part=distal`: a statement as one line, slots that were not said left out. */
export function line(statement: Statement): string {
  switch (statement.kind) {
    case 'finding': {
      const { kind: _, site, side, finding, present, ...rest } = statement;
      return words(present ? '' : 'no', finding, side, site, slots(rest));
    }
    case 'csm': {
      const { kind: _, site, side, aspect, present, ...rest } = statement;
      return words(present ? '' : 'no', aspect, side, site, slots(rest));
    }
    case 'vital':
      return words(statement.vital, slots(statement.value));
    case 'history': {
      const { kind: _, topic, text, present, ...rest } = statement;
      return words(present === false ? 'no' : '', `${topic}: ${text}`, slots(rest));
    }
    case 'care': {
      const { kind: _, care, site, side, ...rest } = statement;
      return words(care, side, site, slots(rest));
    }
    case 'visit':
      return words('visit', statement.side, statement.site);
    case 'mark':
    case 'note':
      return `${statement.kind}: ${statement.text}`;
  }
}

function correctionLine({ change, target }: CorrectionFrame): string {
  const { change: way, ...rest } = change;
  const said = 'statement' in rest ? line(rest.statement) : slots(rest);
  return words(way, said, '←', slots(target) || 'last');
}

const words = (...some: readonly (string | null | undefined)[]): string => some.filter(Boolean).join(' ');

const slots = (value: object): string =>
  Object.entries(value)
    .map(([key, slot]) => `${key}=${typeof slot === 'object' ? Object.values(slot ?? {}).join('+') : slot}`)
    .join(' ');
