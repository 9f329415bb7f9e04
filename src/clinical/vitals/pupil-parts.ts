// What one reading says of each part of the pupils: how each reacts, how they look, and whether they are alike.

import type { VitalReading } from '../../terms/index.ts';

type PupilValue = Extract<VitalReading, { vital: 'pupils' }>['value'];

/** Millimetres between the two pupils that make them unequal; from memory. */
const UNEQUAL_MM = 1;

const SIDES = ['left', 'right'] as const;
type Eye = (typeof SIDES)[number];

const reacts = (value: PupilValue, eye: Eye): boolean | undefined =>
  (eye === 'left' ? value.leftReactive : value.rightReactive) ?? value.reactive;

export const sizeOf = (value: PupilValue, eye: Eye): number | undefined =>
  eye === 'left' ? value.leftMm : value.rightMm;

/** `dilated` is said of both, `left-dilated` of one. */
const looks = (value: PupilValue, eye: Eye): boolean =>
  (value.quality ?? []).some((word) => !SIDES.some((side) => side !== eye && word.startsWith(`${side}-`)));

/** True where the sizes, or words, make them unlike; undefined where nothing was said of it. */
function areUnlike({ equal, leftMm, rightMm }: PupilValue): boolean | undefined {
  if (equal === false) return true;
  if (leftMm === undefined || rightMm === undefined) return equal === true ? false : undefined;
  return Math.abs(leftMm - rightMm) >= UNEQUAL_MM;
}

interface PupilPart {
  readonly part: string;
  readonly abnormality: 'grave' | 'mild' | null;
}

/** Every part that the reading speaks of. One that does not react, or unlike ones, are grave; any other odd look is mild. */
export function pupilParts(value: PupilValue): readonly PupilPart[] {
  const unlike = areUnlike(value);
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
    ...(unlike === undefined ? [] : [{ part: 'size', abnormality: unlike ? ('grave' as const) : null }]),
    ...(value.round === undefined
      ? []
      : [{ part: 'shape', abnormality: value.round ? null : ('mild' as const) }]),
  ];
}
