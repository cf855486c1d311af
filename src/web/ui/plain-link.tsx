import type { ComponentProps, MouseEvent } from 'react';

interface PlainLinkProps extends Omit<ComponentProps<'a'>, 'onClick'> {
  /** address in this lab, for a new tab and for who copies it */
  readonly href: string;
  /** what a plain press does instead of loading the page anew */
  readonly onGo: () => void;
}

/**
 * A link for long lists: it does not listen to the address, as the router's own does, so that a hundred of them cost nothing while
 * somebody types or scrolls.
 */
export function PlainLink({ onGo, children, ...rest }: PlainLinkProps) {
  const onClick = (event: MouseEvent): void => {
    if (event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    onGo();
  };
  return (
    <a {...rest} onClick={onClick}>
      {children}
    </a>
  );
}
