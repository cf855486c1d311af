import { Link } from '@tanstack/react-router';
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
  return (
    <Link to="/" search={{ bag: String(bag) }} className={tagClass({ bag, gone, size })} style={tagStyle(bag)}>
      <TagWords bag={bag} />
    </Link>
  );
}
