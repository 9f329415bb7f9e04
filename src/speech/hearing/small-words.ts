// Words whose loss or gain changes nothing that is stated.

const SMALL = new Set(
  'the a an and or but of on in at to over is are be has have his her their your its with for about there any some'.split(
    ' ',
  ),
);

export const isSmallWord = (word: string): boolean => SMALL.has(word);
