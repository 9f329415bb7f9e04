// Starts the hearing in a thread of its own; whatever started the program, the thread reads the sources itself.

import { register } from 'tsx/esm/api';

register();
await import('./hear-in-thread.ts');
