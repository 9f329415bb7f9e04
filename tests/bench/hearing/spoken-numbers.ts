// Figures as they are said: "98" is "ninety eight", "120/80" is "one twenty over eighty", "36.5" is "thirty six point five".

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = '- - twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

function inWords(value: number): string {
  if (value < 20) return ONES[value] ?? '';
  if (value < 100)
    return `${TENS[Math.floor(value / 10)]} ${value % 10 === 0 ? '' : ONES[value % 10]}`.trim();
  const [hundreds, rest] = [Math.floor(value / 100), value % 100];
  if (rest === 0) return `${inWords(hundreds)} hundred`;
  return `${inWords(hundreds)} ${rest < 10 ? `oh ${ONES[rest]}` : inWords(rest)}`;
}

/** The text with its figures in words. */
export const spokenNumbers = (text: string): string =>
  text
    .replace(/(\d+)\s*\/\s*(\d+)/g, '$1 over $2')
    .replace(/(\d+)\.(\d)/g, '$1 point $2')
    .replace(/(\d+)\s*%/g, '$1 percent')
    .replace(/\d+/g, (figures) => ` ${inWords(Number(figures))} `);
