import { useEffect, useRef } from 'react';
import type { Gloss as Piece } from '#api/bags.ts';
import { FIND_PAGE } from '#say/en/find-page.ts';
import { Field } from '../../ui/field.tsx';
import { Gloss } from '../../ui/gloss.tsx';

interface AskFieldProps {
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly read: readonly Piece[];
  /** the address asks for the cursor */
  readonly focus: boolean;
  readonly onFocused: () => void;
  readonly onDown: () => void;
  readonly onEnter: () => void;
}

/** The large field, with what was typed above what it was read as. */
export function AskField({ text, onText, read, focus, onFocused, onDown, onEnter }: AskFieldProps) {
  const around = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!focus) return;
    around.current?.querySelector('input')?.focus();
    around.current?.querySelector('input')?.select();
    onFocused();
  }, [focus, onFocused]);
  return (
    <div className="asking" ref={around}>
      <Field
        ask
        label={FIND_PAGE.field}
        type="search"
        value={text}
        spellCheck={false}
        autoCapitalize="off"
        enterKeyHint="search"
        onChange={(event) => onText(event.target.value)}
        onKeyDown={(event) => {
          const act = { ArrowDown: onDown, Enter: onEnter, Escape: () => onText('') }[event.key];
          if (!act || event.nativeEvent.isComposing) return;
          event.preventDefault();
          act();
        }}
      />
      {text.trim() && <Gloss pieces={read} />}
      <p className="three s help">{FIND_PAGE.help}</p>
    </div>
  );
}
