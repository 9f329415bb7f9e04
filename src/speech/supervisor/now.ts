// How it stands with an ear, in a form that a view can show.

export type EarNow =
  | { readonly state: 'off' }
  /** wanted, and not hearing yet */
  | { readonly state: 'starting' }
  | { readonly state: 'hearing' }
  /** wanted, and no sound arrives since `since` (epoch ms); it is tried again by itself. `why` is a clause. */
  | { readonly state: 'deaf'; readonly why: string; readonly since: number }
  /** given up until a person does something; `why` is a sentence */
  | { readonly state: 'stopped'; readonly why: string };

/** A stretch in which nothing could be heard though it was wanted, epoch ms; `why` is a clause. */
export interface Gap {
  readonly from: number;
  readonly to: number;
  readonly why: string;
}
