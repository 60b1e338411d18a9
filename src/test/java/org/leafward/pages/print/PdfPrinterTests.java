package org.leafward.pages.print;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leafward.measure.BadInput;
import org.leafward.support.LocalServer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

/** PDF read back by PDFBox. */
class PdfPrinterTests {

	private static final Instant AT = Instant.parse("2026-11-26T18:00:00Z");

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static PdfPrinter printer;

	@BeforeAll
	static void open() throws IOException {
		printer = new PdfPrinter();
	}

	@AfterAll
	static void close() {
		printer.destroy();
	}

	@Test
	void theTextIsThereTaggedAndNamed() throws IOException {
		try (PDDocument pdf = read(page("<h1>2026 at Elm</h1><p>Grüße, 5 &lt; 6 &amp; “more”, 32 °F, −3</p>"
				+ "<table><thead><tr><th scope=\"col\">Work</th></tr></thead><tbody><tr><td>pruning</td></tr></tbody></table>"))) {
			assertThat(text(pdf)).contains("2026 at Elm", "Grüße, 5 < 6 & “more”, 32 °F, −3", "pruning", "1 / 1");
			assertThat(pdf.getNumberOfPages()).isOne();
			assertThat(pdf.getDocumentInformation().getTitle()).isEqualTo("A title");
			assertThat(pdf.getDocumentInformation().getProducer()).isEqualTo("Leafward");
			assertThat(pdf.getDocumentInformation().getCreationDate().toInstant()).isEqualTo(AT);
			// ISO 14289-1, 7.1 and 7.2: marked, with a structure and a language.
			assertThat(pdf.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
			assertThat(pdf.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
			assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
			assertThat(pdf.getDocumentCatalog().getAcroForm()).as("a form, whose font would not be embedded").isNull();
			for (PDPage sheet : pdf.getPages()) {
				for (var name : sheet.getResources().getFontNames()) {
					PDFont font = sheet.getResources().getFont(name);
					assertThat(font.isEmbedded()).as(font.getName()).isTrue();
				}
			}
		}
	}

	@ParameterizedTest
	@ValueSource(strings = { "A4", "LETTER" })
	void sheetsHaveTheSizeThatWasAskedFor(Paper paper) throws IOException {
		try (PDDocument pdf = Loader.loadPDF(printer.print(page("<p>x</p>"), paper, AT, ZONE))) {
			float width = pdf.getPage(0).getMediaBox().getWidth();
			// 210 mm and 8.5 in, in points of 1/72 in.
			assertThat(width).isBetween((paper == Paper.A4) ? 595f : 611.5f, (paper == Paper.A4) ? 595.5f : 612.5f);
		}
	}

	@Test
	void theSamePageIsTheSameFile() {
		String page = page("<h1>2026</h1><p>the same</p>");
		assertThat(printer.print(page, Paper.A4, AT, ZONE)).isEqualTo(printer.print(page, Paper.A4, AT, ZONE));
	}

	@Test
	void whatTheFontLacksBecomesAVisibleMark() throws IOException {
		assertThat(printer.printable("ab\u25a1c")).as("the font has the mark itself").isEqualTo("ab\u25a1c");
		assertThat(printer.printable("oak \ud83c\udf33, \u6797")).isEqualTo("oak \u25a1, \u25a1");
		assertThat(printer.printable("\ud83d\udc69\u200d\ud83c\udf3e")).as("joined").isEqualTo("\u25a1\u25a1");
		assertThat(printer.printable("a\u0007b\u202ec\ud800")).isEqualTo("a\u25a1bc\u25a1");
		assertThat(printer.printable("Жук, ελιά, שלום")).isEqualTo("Жук, ελιά, שלום");
		try (PDDocument pdf = read(page("<p>\ud83c\udf33 oak, \u0634\u062c\u0631\u0629, \u05e2\u05e5</p>"))) {
			assertThat(text(pdf)).contains("\u25a1 oak, \u25a1\u25a1\u25a1\u25a1");
		}
	}

	/**
	 * PDFBox turns what stands from right to left back into the order in which it is
	 * read.
	 */
	@Test
	void hebrewStandsFromRightToLeft() throws IOException {
		try (PDDocument pdf = read(page("<p>The שלום עץ tree</p>"))) {
			assertThat(text(pdf)).contains("The שלום עץ tree");
		}
		assertThat(new Directions.Reorderer().reorderRTLTextToLTR("אב(ג)")).isEqualTo("(ג)בא");
	}

	@ParameterizedTest
	@ValueSource(strings = { "<script>alert(1)</script>", "<img src=\"http://127.0.0.1/x.png\"/>",
			"<p style=\"background: url(http://127.0.0.1/)\">x</p>", "<object data=\"file:///etc/passwd\"></object>",
			"<a href=\"http://127.0.0.1/\">x</a>", "<p>&unknown;</p>", "<p>open", "<?xml-stylesheet href=\"x\"?>",
			"<svg xmlns=\"http://www.w3.org/2000/svg\"></svg>", "<style>@import url(http://127.0.0.1/);</style>" })
	void whatTemplatesDoNotUseIsRefused(String body) {
		assertThatIllegalArgumentException().isThrownBy(() -> printer.print(page(body), Paper.A4, AT, ZONE));
	}

	@Test
	void noEntityIsLookedUp() throws Exception {
		try (LocalServer server = LocalServer.start()) {
			String address = server.address("/secret").toString();
			for (String type : new String[] { "<!DOCTYPE html SYSTEM \"%s\">".formatted(address),
					"<!DOCTYPE html [<!ENTITY e SYSTEM \"%s\">]>".formatted(address) }) {
				assertThatIllegalArgumentException()
					.isThrownBy(() -> printer.print(type + page("<p>x</p>"), Paper.A4, AT, ZONE));
			}
			assertThat(server.asked()).isEmpty();
		}
	}

	@Test
	void whatIsTooLongIsRefusedInWords() {
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> printer.print(page("<p>x</p>".repeat(8_000)), Paper.A4, AT, ZONE))
			.withMessageContaining("120 sheets");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> printer.print(page("x".repeat(PdfPrinter.MOST_CHARACTERS)), Paper.A4, AT, ZONE));
	}

	@Test
	void paperFollowsTheRegionUnlessAskedFor() {
		assertThat(Paper.of(null, "US-MN")).isEqualTo(Paper.LETTER);
		assertThat(Paper.of("", "DE-BY")).isEqualTo(Paper.A4);
		assertThat(Paper.of("a4", "US-MN")).isEqualTo(Paper.A4);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> Paper.of("a3", "")).withMessage("'a3' is no paper");
	}

	private static String page(String body) {
		return "<html lang=\"en\"><head><title>A title</title><meta name=\"description\" content=\"x\" /></head><body>"
				+ body + "</body></html>";
	}

	private static PDDocument read(String page) throws IOException {
		return Loader.loadPDF(printer.print(page, Paper.A4, AT, ZONE));
	}

	private static String text(PDDocument pdf) throws IOException {
		return new PDFTextStripper().getText(pdf);
	}

}
