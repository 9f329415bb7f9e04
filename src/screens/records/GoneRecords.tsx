// Records that were kept here and are not here any more, though this page removed none: that is said, and not passed over.

import { useTools } from '../frame/tools.ts';

interface Props {
  readonly gone: readonly string[];
  readonly changed: () => void;
}

export function GoneRecords({ gone, changed }: Props) {
  const { keeper } = useTools().desk;
  if (gone.length === 0) return null;
  const forget = () => {
    for (const id of gone) keeper.forgetGone(id);
    changed();
  };
  return (
    <section class="incident">
      <h3>Records that are gone</h3>
      <p class="notice trouble">
        <span>
          {gone.length === 1 ? 'A record was' : `${gone.length} records were`} kept on this device and{' '}
          {gone.length === 1 ? 'is' : 'are'} not here any more ({gone.map((id) => id.slice(0, 8)).join(', ')}
          ). This page removed none of {gone.length === 1 ? 'it' : 'them'}: the browser cleared its storage,
          or it was put back to an earlier state. An export can be imported again.
        </span>{' '}
        <button type="button" class="button" onClick={forget}>
          Put away
        </button>
      </p>
    </section>
  );
}
