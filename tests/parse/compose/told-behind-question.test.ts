// What is told in the breath of a question or an instruction is kept with its words; what only asks leaves nothing. All talk here is invented.

import { describe } from 'vitest';
import { checkStatements } from '../rows.ts';

describe('what is told behind a question in its breath', () => {
  checkStatements([
    ['any blood in your spit pink as a prawn', ['note: any blood in your spit pink as a prawn']],
    ['any wobbly teeth two at the top', ['note: any wobbly teeth two at the top']],
    ['any lumps no lump that i can find', ['note: any lumps no lump that i can find']],
    ['can you raise that leg not beyond this', ['note: can you raise that leg not beyond this']],
    ['can you swallow yeah but it scratches', ['note: can you swallow yeah but it scratches']],
    ['swallow for me it stings', ['note: it stings']],
  ]);
});

describe('what only asks or tells what to do', () => {
  checkStatements([
    ['tell me the moment it hurts', []],
    ['stop me as soon as it hurts', []],
    ['any asthma as a child', []],
    ['are you allergic to latex yes or no', []],
    ['can you swallow for me yes good big swallow', []],
    ['bend it up for me no rush at all', []],
    ['take a deep breath and say where it hurts', []],
  ]);
});
