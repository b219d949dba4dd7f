/** The tools of the hand beside the view's buttons: turn, point, draw; take back and wipe while there is something drawn. */
import type { StageSay, StageWord } from '../words';
import { type Pen, TOOLS, type Tool } from './use-pen';

const SIGNS: Readonly<Record<Tool, string>> = {
  hand: 'M5 10h10M10 5v10M5 10l2-2M5 10l2 2M15 10l-2-2M15 10l-2 2M10 5l-2 2M10 5l2 2M10 15l-2-2M10 15l2-2',
  pointer: 'M10 4a6 6 0 1 0 .01 0M10 9.500v1',
  pen: 'M4 16l1-4 8-8 3 3-8 8zM11 6l3 3',
};
const WORDS: Readonly<Record<Tool, StageWord>> = {
  hand: 'stage.tool.hand',
  pointer: 'stage.tool.pointer',
  pen: 'stage.tool.pen',
};

const Sign = ({ d }: { readonly d: string }) => (
  <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true" focusable="false">
    <path d={d} fill="none" stroke="currentColor" strokeWidth="1.600" strokeLinecap="round" strokeLinejoin="round" />
  </svg>
);

/** With the last stroke its two buttons go; who had the focus there goes on at the tool in their hand. */
const thenTool = (node: HTMLElement | null) => (): void => {
  if (node?.contains(document.activeElement))
    node.parentElement?.querySelector<HTMLElement>('[aria-pressed="true"]')?.focus();
};

export const PenTools = ({ pen, say }: { readonly pen: Pen; readonly say: StageSay }) => (
  <div className="stage-controls stage-tools">
    {TOOLS.map((tool) => (
      <button
        key={tool}
        type="button"
        aria-pressed={tool === pen.tool}
        aria-label={say(WORDS[tool])}
        title={say(WORDS[tool])}
        onClick={() => pen.setTool(tool)}
      >
        <Sign d={SIGNS[tool]} />
      </button>
    ))}
    {pen.strokes.length > 0 && (
      <span ref={thenTool} className="stage-strokes">
        <button type="button" aria-label={say('stage.tool.undo')} title={say('stage.tool.undo')} onClick={pen.undo}>
          <Sign d="M4 8h8a4 4 0 0 1 0 8H8M4 8l3-3M4 8l3 3" />
        </button>
        <button type="button" aria-label={say('stage.tool.wipe')} title={say('stage.tool.wipe')} onClick={pen.wipe}>
          <Sign d="M5 5l10 10M15 5L5 15" />
        </button>
      </span>
    )}
  </div>
);
