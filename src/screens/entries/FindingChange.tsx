// Another finding at the same place: the common ones first, then all that the record can name.

import { FINDINGS } from '../../terms/index.ts';
import { findingName } from '../../timeline/index.ts';
import { COMMON } from '../body/touch-words.ts';
import { change } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { Picker } from './Picker.tsx';
import type { Part } from './part.ts';

export function FindingChange({ entry, tell }: Part) {
  const { desk } = useTools();
  if (entry.kind !== 'finding') return null;
  return (
    <Picker
      legend="Finding"
      now={entry.finding}
      name={findingName}
      near={COMMON}
      groups={[['', FINDINGS]]}
      choose={(finding) => tell(change(desk, entry.id, { change: 'finding', finding }))}
    />
  );
}
