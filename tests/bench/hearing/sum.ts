// The figures of one voice in one condition, as a row of the table.

import type { Benched, Condition } from './sentence.ts';

export const HEADINGS = [
  '| set | voice | wind | sentences right | slots right | word errors | refused | wrong, unmarked | invented, unmarked | marked | true but asked about | ordinary talk that enters | and is not asked about | work / sound | words shown, p50 / p95 | settled, p50 / p95 |',
  '| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |',
].join('\n');

const percent = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`;

/** The middle and the slowest but a twentieth, in milliseconds. */
function times(seconds: readonly (number | null)[]): string {
  const sorted = seconds.filter((time) => time !== null).toSorted((a, b) => a - b);
  const at = (share: number): number =>
    Math.round(1000 * (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0));
  return sorted.length === 0 ? '–' : `${at(0.5)} / ${at(0.95)} ms`;
}

/** The row; `exam` are sentences of an examiner, `talk` ordinary ones. */
export function rowOf(
  set: string,
  { voice, wind }: Condition,
  exam: readonly Benched[],
  talk: readonly Benched[],
): string {
  const sum = (value: (one: Benched) => number): number => exam.reduce((all, one) => all + value(one), 0);
  const count = (is: (one: Benched) => boolean): number => exam.filter(is).length;
  const words = sum(({ said }) => said.split(' ').length);
  const all = [...exam, ...talk];
  const work = all.reduce((total, one) => total + one.work, 0);
  const sound = all.reduce((total, one) => total + one.sound, 0);
  const enters = talk.filter(({ score }) => score.entries > 0);
  const unasked = enters.filter(({ score }) => score.wrong || score.invented);
  const cells = [
    set,
    voice,
    wind === null ? 'none' : `${wind} dB`,
    `${count(({ score }) => score.met === score.slots && !score.wrong && !score.invented && !score.marked)}/${exam.length}`,
    exam.length === 0 ? '–' : (sum(({ score }) => score.met) / sum(({ score }) => score.slots)).toFixed(3),
    percent(
      sum((one) => one.wordErrors),
      words,
    ),
    percent(
      count(({ heard }) => !heard.some(({ understood }) => understood)),
      exam.length,
    ),
    percent(
      count(({ score }) => score.wrong),
      exam.length,
    ),
    percent(
      count(({ score }) => score.invented),
      exam.length,
    ),
    percent(
      count(({ score }) => score.marked),
      exam.length,
    ),
    percent(
      count(({ score }) => score.asked),
      exam.length,
    ),
    percent(enters.length, talk.length),
    percent(unasked.length, talk.length),
    (work / sound).toFixed(2),
    times(exam.map(({ shown }) => shown)),
    times(exam.map(({ settled }) => settled)),
  ];
  return `| ${cells.join(' | ')} |`;
}
