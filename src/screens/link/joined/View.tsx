// The sheet of the link: joining, or for a page that has joined what the post has, what it asks, and who else is there.

import { useState } from 'preact/hooks';
import { type JoinCode, readJoinText } from '../../../link/index.ts';
import { useTools } from '../../frame/tools.ts';
import { Join } from './Join.tsx';
import { Team } from './Team.tsx';

export function View({ close }: { readonly close: () => void }) {
  const { link } = useTools();
  const [opened] = useState(() => (link.opened === null ? null : readJoinText(link.opened)));
  const [code, setCode] = useState<JoinCode | null>(opened?.kind === 'code' ? opened.code : null);
  const joined = link.joined.value;
  if (joined === null) return null;
  const member = joined.member.value;
  const isHere = member !== null && (code === null || code.device === member.code.device);
  if (isHere) return <Team joined={joined} member={member} close={close} />;
  const wrong = opened?.kind === 'refused' ? opened.why : null;
  return <Join joined={joined} code={code} wrong={wrong} take={setCode} close={close} />;
}
