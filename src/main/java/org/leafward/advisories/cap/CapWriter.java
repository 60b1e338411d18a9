package org.leafward.advisories.cap;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.StringJoiner;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.core.chain.CapTime;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/**
 * Writes alerts as CAP 1.2: elements in the order of the schema, an {@code info} for each
 * language that differs in its words only, polygons closed and latitude before longitude.
 * The same alert gives the same octets.
 */
public final class CapWriter {

	/** Namespace of CAP 1.2. */
	public static final String NAMESPACE = "urn:oasis:names:tc:emergency:cap:1.2";

	/**
	 * Media type of a document (CAP 1.2, section 4.3 names no other; registered later).
	 */
	public static final String MEDIA_TYPE = "application/cap+xml";

	/** Decimals of a degree: some ten metres are more than a county line is known by. */
	private static final int DECIMALS = 4;

	private final ByteArrayOutputStream octets = new ByteArrayOutputStream();

	private final XMLStreamWriter xml;

	private CapWriter() throws XMLStreamException {
		this.xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(this.octets, "UTF-8");
	}

	/**
	 * Writes an alert.
	 * @param alert the alert
	 * @return an XML document in UTF-8
	 */
	public static byte[] write(CapAlert alert) {
		try {
			CapWriter writer = new CapWriter();
			writer.alert(alert);
			writer.xml.close();
			return writer.octets.toByteArray();
		}
		catch (XMLStreamException ex) {
			throw new IllegalStateException("memory takes whatever is written", ex);
		}
	}

	private void alert(CapAlert alert) throws XMLStreamException {
		this.xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
		this.xml.writeCharacters("\n");
		this.xml.setDefaultNamespace(NAMESPACE);
		this.xml.writeStartElement(NAMESPACE, "alert");
		this.xml.writeDefaultNamespace(NAMESPACE);
		element(1, "identifier", alert.identifier());
		element(1, "sender", alert.sender());
		element(1, "sent", time(alert.sent(), alert));
		element(1, "status", alert.status().cap());
		element(1, "msgType", alert.type().cap());
		element(1, "source", alert.source());
		element(1, "scope", "Public");
		element(1, "note", alert.note());
		element(1, "references", alert.references());
		element(1, "incidents", alert.incident());
		for (CapAlert.Text text : alert.texts()) {
			info(alert, text);
		}
		this.xml.writeCharacters("\n");
		this.xml.writeEndElement();
		this.xml.writeCharacters("\n");
		this.xml.writeEndDocument();
	}

	private void info(CapAlert alert, CapAlert.Text text) throws XMLStreamException {
		open(1, "info");
		element(2, "language", text.language());
		element(2, "category", alert.facts().category().cap());
		element(2, "event", text.event());
		for (var response : alert.facts().responses()) {
			element(2, "responseType", response.cap());
		}
		element(2, "urgency", alert.facts().urgency().cap());
		element(2, "severity", alert.facts().severity().cap());
		element(2, "certainty", alert.facts().certainty().cap());
		element(2, "effective", time(alert.sent(), alert));
		if (alert.onset().isAfter(alert.sent())) {
			element(2, "onset", time(alert.onset(), alert));
		}
		element(2, "expires", time(alert.expires(), alert));
		element(2, "senderName", alert.senderName());
		element(2, "headline", text.headline());
		element(2, "description", text.description());
		element(2, "instruction", text.instruction());
		element(2, "web", alert.web().toString());
		element(2, "contact", alert.contact());
		for (CapAlert.Place area : alert.areas()) {
			open(2, "area");
			element(3, "areaDesc", area.name());
			for (Ring ring : area.rings()) {
				element(3, "polygon", polygon(ring));
			}
			close(2);
		}
		close(1);
	}

	private static String time(Instant time, CapAlert alert) {
		return CapTime.write(time, alert.zone());
	}

	/**
	 * A ring as the standard writes it (section 3.2.4): pairs of latitude and longitude,
	 * the last one the same as the first.
	 * @param ring the ring
	 * @return pairs with a space between them
	 */
	static String polygon(Ring ring) {
		StringJoiner pairs = new StringJoiner(" ");
		for (Position one : ring.positions()) {
			pairs.add(degrees(one.latitude()) + "," + degrees(one.longitude()));
		}
		return pairs.toString();
	}

	private static String degrees(double value) {
		BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
		return (rounded.signum() == 0) ? "0" : rounded.stripTrailingZeros().toPlainString();
	}

	private void element(int depth, String name, @Nullable String text) throws XMLStreamException {
		if (text == null || text.isEmpty()) {
			return;
		}
		indent(depth);
		this.xml.writeStartElement(NAMESPACE, name);
		this.xml.writeCharacters(text);
		this.xml.writeEndElement();
	}

	private void open(int depth, String name) throws XMLStreamException {
		indent(depth);
		this.xml.writeStartElement(NAMESPACE, name);
	}

	private void close(int depth) throws XMLStreamException {
		indent(depth);
		this.xml.writeEndElement();
	}

	/** Between elements only, never around a value. */
	private void indent(int depth) throws XMLStreamException {
		this.xml.writeCharacters("\n" + "  ".repeat(depth));
	}

}
