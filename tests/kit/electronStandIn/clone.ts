// Values on their way between processes and worlds: copied, never shared, and refused where Electron refuses them.

/** What crosses between processes: a structured clone. */
export function overTheWire<T>(value: T): T {
  try {
    return structuredClone(value);
  } catch {
    throw new Error('An object could not be cloned.');
  }
}

/**
 * What crosses the context bridge: plain values are copied and frozen, functions become functions of the other world
 * whose arguments and answers cross in turn, promises are carried over.
 */
export function overTheBridge(value: unknown): unknown {
  if (typeof value === 'function') {
    const call = value as (...args: unknown[]) => unknown;
    return (...args: unknown[]) => overTheBridge(call(...args.map(overTheBridge)));
  }
  if (isPromise(value)) return value.then(overTheBridge, (error) => Promise.reject(plainError(error)));
  if (Array.isArray(value)) return Object.freeze(value.map(overTheBridge));
  if (isPlain(value)) {
    return Object.freeze(
      Object.fromEntries(Object.entries(value).map(([key, v]) => [key, overTheBridge(v)])),
    );
  }
  // A file of the DOM is one of the things that cross as they are.
  if (value instanceof File) return value;
  if (typeof value === 'symbol') throw new Error('An object could not be cloned.');
  return overTheWire(value);
}

/** Of an error only its message crosses. */
function plainError(error: unknown): Error {
  return new Error(error instanceof Error || isErrorLike(error) ? error.message : String(error));
}

function isErrorLike(error: unknown): error is { readonly message: string } {
  return (
    typeof error === 'object' && error !== null && 'message' in error && typeof error.message === 'string'
  );
}

function isPromise(value: unknown): value is Promise<unknown> {
  return typeof value === 'object' && value !== null && 'then' in value && typeof value.then === 'function';
}

/** An object without a class, of whatever world. */
function isPlain(value: unknown): value is object {
  if (typeof value !== 'object' || value === null) return false;
  const proto: unknown = Object.getPrototypeOf(value);
  return proto === null || Object.getPrototypeOf(proto) === null;
}
