import { useNavigate } from '@tanstack/react-router';
import { PlainLink } from './plain-link.tsx';
import { TagWords, tagClass, tagStyle, type TagSize } from './tag.tsx';

/** A tag that opens its bag in Find. */
export function BagLink({
  bag,
  gone = false,
  size = 'normal',
}: {
  readonly bag: number;
  readonly gone?: boolean;
  readonly size?: TagSize;
}) {
  const navigate = useNavigate();
  return (
    <PlainLink
      href={`/?bag=${bag}`}
      onGo={() => void navigate({ to: '/', search: { bag: String(bag) } })}
      className={tagClass({ bag, gone, size })}
      style={tagStyle(bag)}
    >
      <TagWords bag={bag} />
    </PlainLink>
  );
}
