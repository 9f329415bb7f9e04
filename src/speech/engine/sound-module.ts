// What is used of the bundled recogniser's compiled module, beyond the part that its package declares.

export interface PackageDecoder {
  /** the address of the compiled decoder */
  readonly cdecoder: number;
  initialized: boolean;
  has_config(key: string): boolean;
  get_config(key: string): string | number;
  set_config(key: string, value: string | number | boolean): boolean;
  start(): void;
  stop(): void;
  process_audio(samples: Float32Array, noSearch?: boolean, whole?: boolean): number;
  lookup_word(word: string): string | null;
  add_words(...words: readonly (readonly [word: string, phones: string])[]): void;
  delete(): void;
}

export interface PackageEndpointer {
  get_frame_size(): number;
  get_in_speech(): boolean;
  /** seconds since the first frame */
  get_speech_start(): number;
  get_speech_end(): number;
  /** the next frame of speech, which is some frames old, or null */
  process(frame: Float32Array): Float32Array | null;
}

/** The functions that build a network of words are compiled in and exported, but have no wrapper. */
export interface SoundModule {
  readonly Decoder: new (settings: Readonly<Record<string, string | number | boolean>>) => PackageDecoder;
  readonly Endpointer: new (settings: {
    readonly samprate: number;
    readonly mode?: number;
    readonly window?: number;
    readonly ratio?: number;
  }) => PackageEndpointer;
  readonly HEAP8: Int8Array;
  readonly HEAP32: Int32Array;
  _malloc(bytes: number): number;
  _free(address: number): void;
  _decoder_logmath(decoder: number): number;
  _decoder_set_fsg(decoder: number, network: number): number;
  _decoder_hyp(decoder: number, score: number): number;
  _decoder_seg_iter(decoder: number): number;
  _seg_iter_next(segment: number): number;
  _fsg_model_init(name: number, logmath: number, languageWeight: number, states: number): number;
  _fsg_set_states(network: number, first: number, last: number): void;
  _fsg_model_word_add(network: number, word: number): number;
  _fsg_model_trans_add(network: number, from: number, to: number, logProbability: number, word: number): void;
  _fsg_model_null_trans_add(network: number, from: number, to: number, logProbability: number): number;
  _fsg_model_free(network: number): number;
  _decoder_init_cleanup(decoder: number): number;
  _decoder_init_fe(decoder: number): number;
  _decoder_init_feat_s3file(decoder: number, file: number): number;
  _decoder_init_acmod_pre(decoder: number): number;
  _decoder_init_acmod_post(decoder: number): number;
  _decoder_init_dict_s3file(decoder: number, words: number, noises: number): number;
  _bin_mdef_read_s3file(file: number, onlyContextFree: number): number;
  _set_mdef(decoder: number, mdef: number): void;
  _tmat_init_s3file(file: number, logmath: number, floor: number): number;
  _set_tmat(decoder: number, tmat: number): void;
  _load_gmm(decoder: number, means: number, variances: number, weights: number, dump: number): number;
  _s3file_init(address: number, bytes: number): number;
  _s3file_free(file: number): number;
  _logmath_log(logmath: number, probability: number): number;
}
