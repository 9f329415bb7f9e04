// Promises a record passed on from one screen to another device's camera, or as a file, with no network at all.

export { Receive } from './Receive.tsx';
export { Show } from './Show.tsx';

import './qr.css';
