// The criterion of two or more broken proximal long bones, counted over both upper arms and both thighs.

import { type Answer, no, unknown, yes } from '../answer.ts';
import { breaksAt } from '../broken.ts';
import type { Chart } from '../chart.ts';
import { bothOf, type Place, placeText } from '../place.ts';
import { denials } from '../said.ts';
import { sidesOf } from '../side.ts';

const BONES: readonly Place[] = [...bothOf('upper-arm'), ...bothOf('thigh')];

/** Two or more of the four: both upper arms, both thighs. */
export function proximalLongBones(chart: Chart): Answer {
  const asked = BONES.map((bone): Answer => {
    const signs = breaksAt(chart, [bone.site]).filter((entry) =>
      sidesOf(entry.site, entry.side).includes(bone.side),
    );
    const drawn = chart.care.filter(
      (entry) =>
        entry.care === 'traction-splint' &&
        bone.site === 'thigh' &&
        entry.site !== undefined &&
        sidesOf(entry.site, entry.side ?? null).includes(bone.side),
    );
    const place = placeText(bone.site, bone.side);
    const denied = denials(chart, bone, 'deformity');
    // A splint on a side that was said to be whole may be on the other one.
    if (signs.length === 0 && drawn.length > 0 && denied.length > 0)
      return unknown(
        [`which side is meant: traction splint on the ${place}, where deformity was denied`],
        [...drawn, ...denied],
      );
    if (signs.length > 0 || drawn.length > 0) return yes([...signs, ...drawn], place);
    return denied.length > 0 ? no(denied) : unknown([`deformity of the ${place}`]);
  });
  const broken = asked.filter((answer) => answer.truth === 'yes');
  const open = asked.filter((answer) => answer.truth === 'unknown');
  const unsided = breaksAt(chart, ['upper-arm', 'thigh']).filter((entry) => entry.side === null);
  const evidence = broken.flatMap((answer) => answer.evidence);
  if (broken.length >= 2) return yes(evidence, broken.flatMap((answer) => answer.because).join(', '));
  if (unsided.length > 0)
    return unknown(['which side', ...open.flatMap((answer) => answer.missing)], [...evidence, ...unsided]);
  return broken.length + open.length >= 2
    ? unknown(
        open.flatMap((answer) => answer.missing),
        [...evidence, ...open.flatMap((answer) => answer.evidence)],
      )
    : no(
        asked.flatMap((answer) => answer.evidence),
        'fewer than two',
      );
}
