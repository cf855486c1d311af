import type { ComponentProps, ReactNode } from 'react';

interface ButtonProps extends Omit<ComponentProps<'button'>, 'type' | 'className'> {
  readonly look?: 'main' | 'plain' | 'quiet' | 'stop';
  /** the key that does the same, shown as a hint */
  readonly keyHint?: string;
  readonly submit?: boolean;
  readonly children: ReactNode;
}

/** Does something: a verb and its object. One `main` a view. */
export function Button({ look = 'plain', keyHint, submit = false, children, ...rest }: ButtonProps) {
  return (
    <button {...rest} type={submit ? 'submit' : 'button'} className={look === 'plain' ? 'btn' : `btn ${look}`}>
      {keyHint && look === 'quiet' ? <span className="word">{children}</span> : children}
      {keyHint && <kbd aria-hidden="true">{keyHint}</kbd>}
    </button>
  );
}
