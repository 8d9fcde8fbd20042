package org.lapwright.app.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.atomic.AtomicInteger;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is printed, read back by PDFBox; sizes of paper as PDFBox's own {@link PDRectangle} knows them. */
class PdfPrinterTest {
    private static final String BACK = "<div class=\"back\"><p>the back</p></div>";

    private static String rows(int count) {
        StringBuilder rows = new StringBuilder("<table class=\"rows\"><tbody>");
        for (int i = 0; i < count; i++) {
            rows.append("<tr><td>row ").append(i).append("</td><td class=\"value\">1</td></tr>");
        }
        return rows.append("</tbody></table>").toString();
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf);
    }

    @ParameterizedTest
    @EnumSource
    void theFrontIsOnePageAsLongAsItCanBeRead(Paper paper) throws IOException {
        PDRectangle size = paper == Paper.A4 ? PDRectangle.A4 : PDRectangle.LETTER;
        for (int count : new int[] {1, 60, 70}) {
            try (PDDocument pdf = Loader.loadPDF(new PdfPrinter().print("t", rows(count) + BACK, paper))) {
                assertThat(pdf.getNumberOfPages()).as("%d rows", count).isEqualTo(2);
                assertThat(text(pdf, 1)).contains("row " + (count - 1)).doesNotContain("the back");
                assertThat(text(pdf, 2)).contains("the back").doesNotContain("row");
                assertThat(pdf.getPage(0).getMediaBox().getWidth()).isCloseTo(size.getWidth(), within(0.5f));
                assertThat(pdf.getPage(0).getMediaBox().getHeight()).isCloseTo(size.getHeight(), within(0.5f));
            }
        }
    }

    @Test
    void whatIsTooLongForOnePageGoesOnAndLosesNothing() throws IOException {
        try (PDDocument pdf = Loader.loadPDF(new PdfPrinter().print("t", rows(400) + BACK, Paper.A4))) {
            String all = new PDFTextStripper().getText(pdf);
            for (int i = 0; i < 400; i++) {
                assertThat(all).contains("row " + i + " ");
            }
            assertThat(text(pdf, pdf.getNumberOfPages())).contains("the back");
        }
    }

    @Test
    void everyFontIsInTheFileAndSignsOfTheTradeAreInTheFont() throws IOException {
        String signs = "± − · – “ä” Ø Ω ² µ°";
        try (PDDocument pdf =
                Loader.loadPDF(new PdfPrinter().print("a & <b>", "<p>" + signs + "</p>" + BACK, Paper.A4))) {
            assertThat(text(pdf, 1)).contains(signs);
            assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("a & <b>");
            var resources = pdf.getPage(0).getResources();
            for (var name : resources.getFontNames()) {
                PDFont font = resources.getFont(name);
                assertThat(font.isEmbedded()).as(font.getName()).isTrue();
            }
        }
    }

    @Test
    void nothingIsFetched() throws IOException {
        AtomicInteger calls = new AtomicInteger();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            calls.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
        try {
            String there = "http://127.0.0.1:" + server.getAddress().getPort();
            new PdfPrinter()
                    .print(
                            "t",
                            "<img src=\"%s/a.png\"/><link rel=\"stylesheet\" href=\"%s/a.css\"/><svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"9\" height=\"9\"><image width=\"9\" height=\"9\" xlink:href=\"%s/b.png\"/></svg>"
                                            .formatted(there, there, there)
                                    + BACK,
                            Paper.A4);
        } finally {
            server.stop(0);
        }
        assertThat(calls).hasValue(0);
    }
}
