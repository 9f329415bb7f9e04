// The bar of the link at the head of the page; nothing where the page is in no incident.

import { useTools } from '../frame/tools.ts';

export function LinkBar() {
  const { link } = useTools();
  const joined = link.joined.value;
  return joined === null ? null : <joined.Bar />;
}
