// Speech made by Debian's flite, festival and espeak-ng, in voices that they bring along; nobody's recording is kept or used.

import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Every voice with the command that writes a sentence to a file. */
const COMMANDS: Readonly<Record<string, (said: string, file: string) => readonly [string, ...string[]]>> = {
  awb: (said, file) => ['flite', '-voice', 'awb', '-t', said, '-o', file],
  rms: (said, file) => ['flite', '-voice', 'rms', '-t', said, '-o', file],
  slt: (said, file) => ['flite', '-voice', 'slt', '-t', said, '-o', file],
  kal16: (said, file) => ['flite', '-voice', 'kal16', '-t', said, '-o', file],
  hts: (said, file) => ['text2wave', said, '-o', file, '-eval', '(voice_cmu_us_slt_arctic_hts)'],
  espeak: (said, file) => ['espeak-ng', '-v', 'en-us', '-s', '150', '-w', file, said],
};

/** The four voices of the goals; kal16 is older, and espeak-ng makes formants, which the model was never shown. */
export const VOICES: readonly string[] = ['awb', 'rms', 'slt', 'hts'];
export const ALL_VOICES: readonly string[] = Object.keys(COMMANDS);

const FOLDER = join(tmpdir(), 'fieldsay-bench-hearing');
/** Seconds of quiet before and after each sentence. */
const QUIET = 0.5;

/** The sentence at 16 000 samples a second, with quiet before and after; made once and kept in the temporary folder. */
export function speak(voice: string, sentence: string): Float32Array {
  const name = createHash('sha256').update(`${voice} ${sentence}`).digest('hex').slice(0, 20);
  const path = join(FOLDER, `${name}.raw`);
  if (!existsSync(path)) make(voice, sentence, path);
  const bytes = readFileSync(path);
  const samples = new Int16Array(bytes.buffer, bytes.byteOffset, bytes.length / 2);
  return Float32Array.from(samples, (value) => value / 32_768);
}

function make(voice: string, sentence: string, path: string): void {
  mkdirSync(FOLDER, { recursive: true });
  const [spoken, text, raw] = [`${path}.wav`, `${path}.txt`, `${path}.part`];
  writeFileSync(text, sentence);
  const command = COMMANDS[voice];
  if (command === undefined)
    throw new Error(`There is no voice ${voice}; there are ${ALL_VOICES.join(', ')}.`);
  const [program, ...words] = command(voice === 'hts' ? text : sentence, spoken);
  execFileSync(program, words, { stdio: 'pipe' });
  // Written aside and then renamed, so that a run that was stopped leaves no half of a sentence.
  const form = ['-t', 'raw', '-r', '16000', '-b', '16', '-c', '1', '-e', 'signed'];
  execFileSync('sox', ['-R', spoken, ...form, raw, 'gain', '-n', '-6', 'pad', `${QUIET}`, `${QUIET}`]);
  renameSync(raw, path);
}

/** The voices that this machine can speak in. */
export const voicesHere = (voices: readonly string[]): readonly string[] =>
  voices.filter((voice) => {
    try {
      return speak(voice, 'ready').length > 0;
    } catch {
      return false;
    }
  });
