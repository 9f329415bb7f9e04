// Another place for an entry: those of the same region first, then the whole body in the order of the examination.

import type { Entry } from '../../record/index.ts';
import { REGIONS, regionOf, SITES, type Site } from '../../terms/index.ts';
import { siteName } from '../../timeline/index.ts';
import { change } from '../desk/index.ts';
import { useTools } from '../frame/tools.ts';
import { Picker } from './Picker.tsx';
import type { Part } from './part.ts';

/** The places that an entry can be of; a limb's end is checked at hand and foot alone. */
const sitesFor = (entry: Entry): readonly Site[] => (entry.kind === 'csm' ? ['hand', 'foot'] : SITES);

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function SiteChange({ entry, tell }: Part) {
  const { desk } = useTools();
  if (!('site' in entry) || entry.site === undefined) return null;
  const now = entry.site;
  const sites = sitesFor(entry);
  const inRegion = (region: (typeof REGIONS)[number]): readonly Site[] =>
    sites.filter((site) => regionOf(site) === region);
  const near = entry.kind === 'csm' ? sites : inRegion(regionOf(now));
  const groups = REGIONS.map((region) => [capital(region), inRegion(region)] as const);
  return (
    <Picker
      legend="Place"
      now={now}
      name={siteName}
      near={near}
      groups={groups.filter(([, some]) => some.length > 0)}
      choose={(site) => tell(change(desk, entry.id, { change: 'site', site }))}
    />
  );
}
