package org.leafward.pages.print;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.GregorianCalendar;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.leafward.measure.BadInput;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.web.server.ResponseStatusException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * Makes PDF of our own templates. It takes plain XHTML without a document type, opens no
 * address of any kind, and draws no picture. The same page made at the same instant is
 * the same file, octet by octet. What the font has no sign for becomes a hollow box.
 * <p>
 * The PDF is tagged (PDF/UA, ISO 14289-1, as far as the library goes), with its language
 * and its title. The font is Liberation Sans (SIL Open Font License 1.1), which PDFBox
 * brings: Latin, Greek, Cyrillic and Hebrew, in one weight.
 */
@Component
public class PdfPrinter implements DisposableBean {

	/** Most characters of a page; some hundred sheets. */
	static final int MOST_CHARACTERS = 1_500_000;

	/** Most sheets. */
	static final int MOST_SHEETS = 120;

	/** Printed at a time; others wait. */
	private static final int AT_A_TIME = 2;

	/** So many may wait. */
	private static final int WAITING = 8;

	private static final Duration MOST_TIME = Duration.ofSeconds(30);

	private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

	/** The family name in print.css. */
	private static final String FAMILY = "leaf";

	/** White square; the font has it. */
	private static final String NO_SIGN = "\u25a1";

	/** All that templates need. What could load something is not among it. */
	private static final Set<String> ELEMENTS = Set.of("html", "head", "title", "meta", "body", "h1", "h2", "h3", "p",
			"ul", "ol", "li", "table", "caption", "thead", "tbody", "tr", "th", "td", "div", "span", "strong", "em",
			"br");

	private static final Set<String> ATTRIBUTES = Set.of("lang", "class", "scope", "colspan", "charset", "name",
			"content", "translate", "id");

	private final byte[] font;

	private final CmapLookup signs;

	private final String style;

	private final ThreadPoolExecutor presses;

	PdfPrinter() throws IOException {
		this.font = read(PDDocument.class, FONT);
		this.style = new String(read(PdfPrinter.class, "/print/print.css"), StandardCharsets.UTF_8);
		TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(this.font));
		this.signs = parsed.getUnicodeCmapLookup();
		FontMappers.set(new OnlyFont(parsed));
		XRLog.setLoggingEnabled(false);
		this.presses = new ThreadPoolExecutor(AT_A_TIME, AT_A_TIME, 10, TimeUnit.SECONDS,
				new ArrayBlockingQueue<>(WAITING), (work) -> {
					Thread thread = new Thread(work, "pdf-printer");
					thread.setDaemon(true);
					return thread;
				});
		this.presses.allowCoreThreadTimeOut(true);
	}

	private static byte[] read(Class<?> owner, String name) throws IOException {
		try (InputStream file = owner.getResourceAsStream(name)) {
			if (file == null) {
				throw new IOException("there is no " + name);
			}
			return file.readAllBytes();
		}
	}

	/**
	 * Prints a page.
	 * @param xhtml well-formed, with a title; only elements and attributes that our
	 * templates use
	 * @param paper its size
	 * @param madeAt the instant to note in the file
	 * @param zone whose clock the note has
	 * @return the PDF, at most {@value #MOST_SHEETS} sheets
	 * @throws BadInput when the page is too long
	 * @throws ResponseStatusException 503 when too many print at a time, or it takes more
	 * than 30 seconds
	 * @throws IllegalArgumentException when the page is none of ours
	 */
	public byte[] print(String xhtml, Paper paper, Instant madeAt, ZoneId zone) {
		if (xhtml.length() > MOST_CHARACTERS) {
			throw tooLong();
		}
		Document page = parse(xhtml);
		try {
			Future<byte[]> printed = this.presses.submit(() -> draw(page, paper, madeAt, zone));
			try {
				return printed.get(MOST_TIME.toSeconds(), TimeUnit.SECONDS);
			}
			finally {
				printed.cancel(true);
			}
		}
		catch (RejectedExecutionException | TimeoutException ex) {
			throw new ResponseStatusException(HttpStatus.SERVICE_UNAVAILABLE, "printing takes too long", ex);
		}
		catch (InterruptedException ex) {
			Thread.currentThread().interrupt();
			throw new ResponseStatusException(HttpStatus.SERVICE_UNAVAILABLE, "the server stops", ex);
		}
		catch (ExecutionException ex) {
			if (ex.getCause() instanceof BadInput bad) {
				throw bad;
			}
			throw new IllegalStateException("the page can't be printed", ex.getCause());
		}
	}

	private static BadInput tooLong() {
		return new BadInput("this is longer than %d sheets".formatted(MOST_SHEETS), "page",
				"take the table of values instead, or print the page from the browser");
	}

	private Document parse(String xhtml) {
		try {
			DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
			factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
			// Neither a document type nor an entity, so nothing to be looked up.
			factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
			factory.setXIncludeAware(false);
			factory.setExpandEntityReferences(false);
			DocumentBuilder builder = factory.newDocumentBuilder();
			// Its own one writes to the console.
			builder.setErrorHandler(new DefaultHandler());
			Document page = builder.parse(new InputSource(new StringReader(printable(xhtml))));
			check(page.getDocumentElement());
			return page;
		}
		catch (ParserConfigurationException | SAXException | IOException ex) {
			throw new IllegalArgumentException("the page is not well-formed: " + ex.getMessage(), ex);
		}
	}

	/** What the font has no sign for, and what XML doesn't allow, is made visible. */
	String printable(String text) {
		StringBuilder printable = new StringBuilder(text.length());
		text.codePoints().forEach((point) -> {
			int type = Character.getType(point);
			if (point == '\n' || point == '\t' || point == '\r') {
				printable.append(' ');
			}
			else if (type == Character.FORMAT || type == Character.NON_SPACING_MARK && !drawable(point)) {
				// Joiners and marks that would change the sign before them; nothing to
				// see.
				return;
			}
			else if (type == Character.CONTROL || !drawable(point)) {
				printable.append(NO_SIGN);
			}
			else {
				printable.appendCodePoint(point);
			}
		});
		return printable.toString();
	}

	private boolean drawable(int point) {
		return this.signs.getGlyphId(point) > 0;
	}

	private static void check(Element element) {
		if (!ELEMENTS.contains(element.getTagName())) {
			throw new IllegalArgumentException("<%s> is not printed".formatted(element.getTagName()));
		}
		for (int i = 0; i < element.getAttributes().getLength(); i++) {
			String name = element.getAttributes().item(i).getNodeName();
			if (!ATTRIBUTES.contains(name)) {
				throw new IllegalArgumentException("the attribute %s is not printed".formatted(name));
			}
		}
		NodeList children = element.getChildNodes();
		for (int i = 0; i < children.getLength(); i++) {
			Node child = children.item(i);
			if (child instanceof Element below) {
				check(below);
			}
			else if (child.getNodeType() == Node.PROCESSING_INSTRUCTION_NODE) {
				throw new IllegalArgumentException("processing instructions are not printed");
			}
		}
	}

	private byte[] draw(Document page, Paper paper, Instant madeAt, ZoneId zone) throws IOException {
		Element style = page.createElement("style");
		style.setTextContent("@page { size: %s; }\n%s".formatted((paper == Paper.A4) ? "A4" : "letter", this.style));
		page.getElementsByTagName("head").item(0).appendChild(style);
		PdfRendererBuilder builder = new PdfRendererBuilder();
		refuseAllAddresses(builder);
		builder.useFont(() -> new ByteArrayInputStream(this.font), FAMILY, 400, FontStyle.NORMAL, true);
		builder.useUnicodeBidiSplitter(Directions::new);
		builder.useUnicodeBidiReorderer(new Directions.Reorderer());
		builder.usePdfUaAccessibility(true);
		builder.withProducer("Leafward");
		builder.withW3cDocument(page, "leafward:page");
		try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
			renderer.layout();
			if (renderer.getRootBox().getLayer().getPages().size() > MOST_SHEETS) {
				renderer.getPdfDocument().close();
				throw tooLong();
			}
			try (PDDocument pdf = renderer.createPDFKeepOpen()) {
				PDDocumentInformation about = pdf.getDocumentInformation();
				about.setCreationDate(GregorianCalendar.from(madeAt.atZone(zone)));
				pdf.setDocumentId(madeAt.getEpochSecond());
				ByteArrayOutputStream out = new ByteArrayOutputStream();
				pdf.save(out);
				return out.toByteArray();
			}
		}
	}

	/** The templates name none; this holds should one ever do. */
	private static void refuseAllAddresses(PdfRendererBuilder builder) {
		builder.useUriResolver((base, uri) -> null);
		builder.useExternalResourceAccessControl((uri, type) -> false,
				ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI);
		builder.useExternalResourceAccessControl((uri, type) -> false,
				ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI);
		builder.useProtocolsStreamImplementation((uri) -> {
			throw new IllegalStateException("no address is opened");
		}, "http", "https", "data", "classpath", "file", "jar", "ftp");
	}

	@Override
	public void destroy() {
		// The font stays open: it is in memory, and PDFBox still knows it.
		this.presses.shutdownNow();
	}

}
