// The files of the two acoustic models: one for the whole band of a voice, and one for what a telephone passes.

/** What differs between the models, by its names in their folders. */
const OWN = ['mdef', 'means', 'variances', 'sendump', 'transition_matrices', 'feat_params.json'] as const;
/** What both have: the noises that are no words. */
const SHARED = ['noisedict.txt'] as const;

/** `wide` hears up to 6,800 hertz, `narrow` up to 3,700. */
export type Band = 'wide' | 'narrow';
const BANDS: readonly Band[] = ['wide', 'narrow'];

type File = (typeof OWN)[number] | (typeof SHARED)[number];

/** Bytes of one model by name. */
export type ModelFiles = Readonly<Record<File, Uint8Array>>;

export type Models = Readonly<Record<Band, ModelFiles>>;

/** A file that is needed: the name under which it is handed in, and where it lies. */
export interface ModelFile {
  readonly name: string;
  /** in the package `soundswallower`, or in the project's own folder `src/speech/engine/wide-band` */
  readonly of: 'package' | 'project';
  /** in its folder there */
  readonly file: string;
}

/** The folder of the package's English model, as a path that follows the package's own. */
export const PACKAGE_FOLDER = 'model/en-us';

/** How English words are said, in that folder: needed to work out what is listened for, and not to hear. */
export const DICTIONARY = 'dict.txt';

export const MODEL_FILES: readonly ModelFile[] = [
  ...SHARED.map((file) => ({ name: file, of: 'package', file }) as const),
  ...OWN.map((file) => ({ name: `wide/${file}`, of: 'project', file }) as const),
  ...OWN.map((file) => ({ name: `narrow/${file}`, of: 'package', file }) as const),
];

/** Both models of bytes by the names of `MODEL_FILES`; throws where one is missing. */
export function modelsOf(content: ReadonlyMap<string, Uint8Array>): Models {
  const bytes = (name: string): Uint8Array => {
    const found = content.get(name);
    if (found === undefined) throw new Error(`The recogniser's model lacks a file: ${name}.`);
    return found;
  };
  const models = BANDS.map((band) => {
    const shared = SHARED.map((file) => [file, bytes(file)] as const);
    const own = OWN.map((file) => [file, bytes(`${band}/${file}`)] as const);
    return [band, Object.fromEntries([...shared, ...own])] as const;
  });
  return Object.fromEntries(models) as unknown as Models;
}
