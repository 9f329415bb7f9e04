// Promises that what was said can be heard again beside its entry, for as long as the responder wants it kept.

export { SOUND_CHOICES, type SoundChoice } from './choice.ts';
export { HearAgain } from './HearAgain.tsx';
export { createPlayback, type Playback } from './playback.ts';
export { SoundChoiceForm } from './SoundChoice.tsx';
export { createSounds, type Sounds } from './sounds.ts';
