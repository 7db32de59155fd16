// The address of the window in the desktop shell: a scheme of its own, served by the program and by nothing else.
import { protocol } from 'electron';

const SCHEME = 'app';
const AUTHORITY = 'turnlay';

/** The page of the window. */
export const HOME = `${SCHEME}://${AUTHORITY}/`;

/** Must be called before the app is ready. */
export function registerScheme(): void {
  protocol.registerSchemesAsPrivileged([
    {
      scheme: SCHEME,
      privileges: { standard: true, secure: true, supportFetchAPI: true, stream: true, codeCache: true },
    },
  ]);
}

/** Serves everything under the address of the window; any other name of this scheme holds nothing. */
export function serveScheme(serve: (request: Request) => Promise<Response>): void {
  protocol.handle(SCHEME, async (request) =>
    new URL(request.url).host === AUTHORITY ? serve(request) : new Response(null, { status: 404 }),
  );
}
