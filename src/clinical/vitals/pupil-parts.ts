// What one reading says of each part of the pupils: how each reacts, how they look, and whether they are alike.

import type { VitalReading } from '../../terms/index.ts';

type PupilValue = Extract<VitalReading, { vital: 'pupils' }>['value'];

/**
 * Millimetres between the two pupils up to which healthy people have it too: in dim light they differ by as much as 1 (read in the
 * encyclopaedia's "Physiological anisocoria", and "larger variations are likely to have a pathological cause" in the pupil examination
 * of ophthalmologytraining.com). Whether this patient always had it nobody in the field knows, so that it is told all the same.
 */
const HARMLESS_MM = 1;

const SIDES = ['left', 'right'] as const;
type Eye = (typeof SIDES)[number];

const reacts = (value: PupilValue, eye: Eye): boolean | undefined =>
  (eye === 'left' ? value.leftReactive : value.rightReactive) ?? value.reactive;

export const sizeOf = (value: PupilValue, eye: Eye): number | undefined =>
  eye === 'left' ? value.leftMm : value.rightMm;

/** `dilated` is said of both, `left-dilated` of one. */
const looks = (value: PupilValue, eye: Eye): boolean =>
  (value.quality ?? []).some((word) => !SIDES.some((side) => side !== eye && word.startsWith(`${side}-`)));

/** How much alike the sizes, or words, make them; undefined where nothing was said of it. */
function unlikeness({ equal, leftMm, rightMm }: PupilValue): PupilPart['abnormality'] | undefined {
  if (equal === false) return 'grave';
  if (leftMm === undefined || rightMm === undefined) return equal === true ? null : undefined;
  const apart = Math.abs(leftMm - rightMm);
  return apart > HARMLESS_MM ? 'grave' : apart === HARMLESS_MM ? 'mild' : null;
}

interface PupilPart {
  readonly part: string;
  readonly abnormality: 'grave' | 'mild' | null;
}

/** Every part that the reading speaks of. One that does not react, or ones clearly unlike, are grave; any other odd look is mild. */
export function pupilParts(value: PupilValue): readonly PupilPart[] {
  const unlike = unlikeness(value);
  const eyes = SIDES.flatMap((eye): readonly PupilPart[] => {
    const reaction = reacts(value, eye);
    const isOdd = looks(value, eye);
    const isSeen = isOdd || reaction !== undefined || sizeOf(value, eye) !== undefined;
    return [
      ...(reaction === undefined
        ? []
        : [{ part: `${eye} reaction`, abnormality: reaction ? null : ('grave' as const) }]),
      ...(isSeen ? [{ part: `${eye} look`, abnormality: isOdd ? ('mild' as const) : null }] : []),
    ];
  });
  return [
    ...eyes,
    ...(unlike === undefined ? [] : [{ part: 'size', abnormality: unlike }]),
    ...(value.round === undefined
      ? []
      : [{ part: 'shape', abnormality: value.round ? null : ('mild' as const) }]),
  ];
}
