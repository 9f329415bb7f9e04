// How much of what responders are known to say the hearing grammar lets be said: written sentences walked through its network,
// without any sound. A third of them is kept apart, and neither shown nor tuned on.
//
//   npm run bench:hearing-text                 the table, and the grammar's size
//   npm run bench:hearing-text -- --show talk  and what cannot be said, of one source, with the word where it stops

import { parseArgs } from 'node:util';
import { hearingFiles } from '../../../src/replay/hearing-setup.ts';
import { hearingGrammar } from '../../../src/speech/hearing/network-of-files.ts';
import { wordsOf } from '../../../src/speech/network/network.ts';
import { walker } from '../../speech/says.ts';
import { realReader } from '../../talk-case.ts';
import { TUNING_MORE_EXAM } from './tuning-set-more.ts';
import { type Written, writtenTalk } from './written-talk.ts';

const { values } = parseArgs({ options: { show: { type: 'string' } } });
const grammar = hearingGrammar(hearingFiles());
if (grammar.kind === 'errors') throw new Error(grammar.errors.map(({ message }) => message).join('\n'));
const network = grammar.network(() => true);
const walk = walker(network);
const known = new Set(wordsOf(network));

/** "the skin's pale" sounds like "the skin is pale", and may be heard as that. */
const waysToSay = (said: string): readonly string[] => [said, said.replace(/(\w+)'s\b/g, '$1 is')];
const canSay = ({ said }: Written): boolean => waysToSay(said).some((way) => walk(way).ends);
const lacksWord = ({ said }: Written): boolean =>
  waysToSay(said).every((way) => way.split(' ').some((word) => !known.has(word)));

const written = writtenTalk(realReader());
const share = (all: readonly Written[]): string => {
  const [said, without] = [
    all.filter(canSay).length,
    all.filter((one) => !canSay(one) && lacksWord(one)).length,
  ];
  return `${said} of ${all.length} (${Math.round((100 * said) / all.length)} %) | ${without}`;
};
console.log('| source | looked at | with a word that it lacks | kept apart | with a word that it lacks |');
console.log('| --- | --- | --- | --- | --- |');
for (const source of ['demo', 'talk', 'parse', 'composed'] as const) {
  const here = written.filter((one) => one.source === source);
  console.log(
    `| ${source} | ${share(here.filter(({ apart }) => !apart))} | ${share(here.filter(({ apart }) => apart))} |`,
  );
}
const { states, arcs, silent } = network;
console.log(`states ${states}, arcs ${arcs.length}, silent ${silent.length}, words ${known.size}`);
console.log(
  `tuning-set-more: ${TUNING_MORE_EXAM.filter((said) => walk(said).ends).length} of ${TUNING_MORE_EXAM.length}`,
);
if (values.show !== undefined)
  for (const one of written.filter(({ source, apart }) => source === values.show && !apart))
    if (!canSay(one)) {
      const words = one.said.split(' ');
      const at = Math.max(...waysToSay(one.said).map((way) => walk(way).words));
      const mark = (word: string, index: number) =>
        `${index === at ? '^' : ''}${word}${known.has(word) ? '' : '*'}`;
      console.log(`  ${words.map(mark).join(' ')}`);
    }
