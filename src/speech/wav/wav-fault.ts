// Why a recording gives no sound, or not all of it, in words for the person who made it.

export interface WavFault {
  readonly kind: 'wav-fault';
  readonly fault: 'not-a-wave' | 'no-format' | 'unsupported' | 'no-sound';
  /** a clause that follows a file's name: "holds no sound" */
  readonly why: string;
}

export const wavFault = (fault: WavFault['fault'], why: string): WavFault => ({
  kind: 'wav-fault',
  fault,
  why,
});

/** How the sound of a recording ended: as its header says, or before. */
export type WavEnd =
  | { readonly kind: 'whole' }
  /** `why` follows a file's name: "ends before its header says" */
  | { readonly kind: 'cut'; readonly why: string };
