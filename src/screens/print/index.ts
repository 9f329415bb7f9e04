// Promises the open record on paper, by the browser's own print, with nothing of the page around it.

export { Print } from './Print.tsx';

import './print.css';
