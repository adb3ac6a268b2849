export { type PageFonts, type PdfNotes, pagesToPdf } from './pages-to-pdf.ts';
