package org.lapwright.app.sheet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * Makes a PDF of a sheet: a front, which is printed as large as one page allows, and a back.
 *
 * <p>One at a time: a sheet takes some tens of megabytes while it is made. Nothing is fetched from anywhere, whatever the sheet
 * says. The font is in the file.
 */
public final class PdfPrinter {
    private static final String FONT_FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String FAMILY = "sheet";
    private static final int REGULAR = 400;

    /** Points; below the last one nobody reads it at a bench. */
    private static final List<Double> SIZES = List.of(10.5, 9.5, 8.5, 7.5, 7.0, 6.5, 6.0);

    // Held, because the logging system forgets levels of loggers that nobody holds.
    private static final Logger PDFBOX_LOG = Logger.getLogger("org.apache.pdfbox");

    private final String style = text("/sheet/sheet.css");

    static {
        // Its news is for those who write the sheet's style, not for those who print.
        XRLog.setLoggingEnabled(false);
        PDFBOX_LOG.setLevel(Level.SEVERE);
    }

    /** A printer. */
    public PdfPrinter() {}

    /**
     * The PDF of a sheet. When the front does not fit on one page in the smallest type it goes on on the next: nothing is left out.
     *
     * @param title of the document
     * @param body well-formed XHTML: the front, then the back in an element of the class {@code back}
     * @param paper what it is printed on
     */
    public synchronized byte[] print(String title, String body, Paper paper) {
        for (double size : SIZES) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (PdfBoxRenderer renderer =
                    builder(document(title, body, paper, size)).toStream(out).buildPdfRenderer()) {
                renderer.layout();
                int pages = renderer.getRootBox().getLayer().getPages().size();
                if (pages <= 2 || size == SIZES.get(SIZES.size() - 1)) {
                    renderer.createPDF();
                    return out.toByteArray();
                }
            } catch (IOException impossible) {
                throw new UncheckedIOException("a sheet in memory cannot be printed", impossible);
            }
        }
        throw new IllegalStateException("there is no size of type");
    }

    private static PdfRendererBuilder builder(String document) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFont(() -> open(FONT_FILE), FAMILY, REGULAR, FontStyle.NORMAL, true);
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
        builder.useExternalResourceAccessControl(
                (uri, type) -> false, ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
        builder.withHtmlContent(document, "");
        return builder;
    }

    private String document(String title, String body, Paper paper, double points) {
        return ("<html lang=\"en\"><head><title>%s</title><style>@page { size: %s; margin: 11mm 12mm; }\n"
                        + "body { font-family: %s; font-size: %spt; }\n%s</style></head><body>%s</body></html>")
                .formatted(
                        escaped(title), paper.size(), FAMILY, String.format(Locale.ROOT, "%.1f", points), style, body);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static InputStream open(String resource) {
        InputStream in = PdfPrinter.class.getResourceAsStream(resource);
        if (in == null) {
            throw new IllegalStateException("'" + resource + "' is not on the class path");
        }
        return in;
    }

    private static String text(String resource) {
        try (InputStream in = open(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("'" + resource + "' cannot be read", unreadable);
        }
    }
}
