// The worker that reads PDFs for pictures: one for the window, started when it is wanted, replaced when it has failed.
import { PDFWorker } from 'pdfjs-dist';
import PortWorker from 'pdfjs-dist/build/pdf.worker.mjs?worker';

export interface PdfReader {
  readonly worker: PDFWorker;
  /** Rejects when the worker could not start or has broken down; a document that waits for it would wait forever. */
  readonly failed: Promise<never>;
  readonly end: () => void;
}

/** Starts a worker of its own for pdf.js, which would fall back to the window's own thread if it were left to choose. */
export function startPdfReader(): PdfReader {
  const port = new PortWorker({ name: 'pdf-reader' });
  const worker = new PDFWorker({ port: port as unknown as null });
  const failed = new Promise<never>((_resolve, reject) => {
    const fail = (event: Event) =>
      reject(new Error(event instanceof ErrorEvent ? event.message : 'The reader of PDFs did not start.'));
    port.addEventListener('error', fail);
    port.addEventListener('messageerror', fail);
  });
  failed.catch(() => undefined);
  const end = () => {
    worker.destroy();
    port.terminate();
  };
  return { worker, failed, end };
}
