/** A sentence with a name in it that somebody gave: whichever way the name is written, the words around it keep their order. */
export function Named({ says, name }: { readonly says: string; readonly name: string }) {
  const at = name === '' ? -1 : says.indexOf(name);
  if (at < 0) return says;
  return (
    <>
      {says.slice(0, at)}
      <bdi>{name}</bdi>
      {says.slice(at + name.length)}
    </>
  );
}
