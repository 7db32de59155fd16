// The mark of the program: a sheet being turned.
export function Logo() {
  return (
    <svg className="mark" viewBox="0 0 32 32" aria-hidden="true">
      <path d="M6 4h20v24H6z" className="sheet" />
      <path d="M26 4v24L13 24V8z" className="turning" />
    </svg>
  );
}
