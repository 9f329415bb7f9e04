// An acoustic model put into a decoder from its files' bytes: the recogniser itself fetches and reads nothing.

import type { ModelFiles } from './model-files.ts';
import type { PackageDecoder, SoundModule } from './sound-module.ts';

/** Fills a new decoder from the files, in the order that the package's own loading has. Throws where a file is damaged. */
export function loadModel(module: SoundModule, decoder: PackageDecoder, files: ModelFiles): void {
  const { cdecoder } = decoder;
  const settings: unknown = JSON.parse(String.fromCharCode(...files['feat_params.json']));
  for (const [key, value] of Object.entries(settings as Record<string, string | number>))
    if (decoder.has_config(key)) decoder.set_config(key, value);
  if (module._decoder_init_cleanup(cdecoder) < 0) throw damaged('settings');
  if (module._decoder_init_fe(cdecoder) === 0) throw damaged('feat_params.json');
  if (module._decoder_init_feat_s3file(cdecoder, 0) === 0) throw damaged('feat_params.json');
  if (module._decoder_init_acmod_pre(cdecoder) === 0) throw damaged('settings');
  const mdef = withFile(module, files.mdef, (file) => module._bin_mdef_read_s3file(file, 0));
  if (mdef === 0) throw damaged('mdef');
  module._set_mdef(cdecoder, mdef);
  const logmath = module._decoder_logmath(cdecoder);
  const floor = Number(decoder.get_config('tmatfloor'));
  const tmat = withFile(module, files.transition_matrices, (file) =>
    module._tmat_init_s3file(file, logmath, floor),
  );
  if (tmat === 0) throw damaged('transition_matrices');
  module._set_tmat(cdecoder, tmat);
  const [means, variances, sendump] = [
    opened(module, files.means),
    opened(module, files.variances),
    opened(module, files.sendump),
  ];
  if (module._load_gmm(cdecoder, means, variances, 0, sendump) < 0) throw damaged('means');
  if (module._decoder_init_acmod_post(cdecoder) < 0) throw damaged('means');
  // Of the model's 130,000 words only those are given, later, that can be heard: its dictionary would take a third of a second.
  const noises = opened(module, files['noisedict.txt']);
  if (module._decoder_init_dict_s3file(cdecoder, 0, noises) === 0) throw damaged('noisedict.txt');
  decoder.initialized = true;
}

const damaged = (file: string): Error => new Error(`The recogniser's model is damaged: ${file}.`);

/** The bytes in the compiled code's memory; it keeps some files and never copies them. */
function opened(module: SoundModule, bytes: Uint8Array): number {
  const address = module._malloc(bytes.length + 1);
  if (address === 0) throw new Error('There is no memory for the recogniser.');
  module.HEAP8.set(bytes, address);
  module.HEAP8[address + bytes.length] = 0;
  return module._s3file_init(address, bytes.length);
}

function withFile(module: SoundModule, bytes: Uint8Array, read: (file: number) => number): number {
  const file = opened(module, bytes);
  const result = read(file);
  module._s3file_free(file);
  return result;
}
