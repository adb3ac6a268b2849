export type { FilmOrder, FilmRefusal } from './film-order.ts';
export { type PageFonts, type PdfNotes, pagesToPdf } from './pages-to-pdf.ts';
