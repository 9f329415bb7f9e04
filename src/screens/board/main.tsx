// Starts the board: it reads what the post has and can change nothing of it but ask.

import { render } from 'preact';
import '../styles/colours.css';
import '../styles/base.css';
import '../styles/controls.css';
import './board.css';
import { Board } from './Board.tsx';
import { createBoard } from './model.ts';

const root = document.getElementById('board');
const model = createBoard(window.location.hash);
window.addEventListener('hashchange', () => window.location.reload());
if (root !== null)
  render(
    model === null ? (
      <p class="board-fault">
        This address lets nobody in. Open the board by the address that the post printed when it began.
      </p>
    ) : (
      <Board model={model} />
    ),
    root,
  );
