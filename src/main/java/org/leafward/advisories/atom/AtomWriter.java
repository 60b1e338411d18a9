package org.leafward.advisories.atom;

import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.StringJoiner;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.leafward.advisories.cap.CapWriter;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;

/**
 * Writes Atom feeds (RFC 4287) that point at CAP documents: an entry for each message,
 * with a link of the media type of CAP by which readers find the alert, and the outline
 * as GeoRSS Simple.
 */
public final class AtomWriter {

	/** Media type of a feed. */
	public static final String MEDIA_TYPE = "application/atom+xml;charset=utf-8";

	private static final String ATOM = "http://www.w3.org/2005/Atom";

	private static final String GEORSS = "http://www.georss.org/georss";

	private static final int DECIMALS = 3;

	private final ByteArrayOutputStream octets = new ByteArrayOutputStream();

	private final XMLStreamWriter xml;

	private AtomWriter() throws XMLStreamException {
		this.xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(this.octets, "UTF-8");
	}

	/**
	 * Writes a feed.
	 * @param feed the feed
	 * @return an XML document in UTF-8; the same feed gives the same octets
	 */
	public static byte[] write(AtomFeed feed) {
		try {
			AtomWriter writer = new AtomWriter();
			writer.feed(feed);
			writer.xml.close();
			return writer.octets.toByteArray();
		}
		catch (XMLStreamException ex) {
			throw new IllegalStateException("memory takes whatever is written", ex);
		}
	}

	private void feed(AtomFeed feed) throws XMLStreamException {
		this.xml.writeStartDocument(StandardCharsets.UTF_8.name(), "1.0");
		this.xml.writeCharacters("\n");
		this.xml.setDefaultNamespace(ATOM);
		this.xml.setPrefix("georss", GEORSS);
		this.xml.writeStartElement(ATOM, "feed");
		this.xml.writeDefaultNamespace(ATOM);
		this.xml.writeNamespace("georss", GEORSS);
		this.xml.writeAttribute("xml", "http://www.w3.org/XML/1998/namespace", "lang", "en");
		element("id", feed.id().toString());
		element("title", feed.title());
		element("subtitle", feed.subtitle());
		element("updated", time(feed.updated()));
		link("self", "application/atom+xml", feed.self().toString());
		link("alternate", "text/html", feed.page().toString());
		this.xml.writeStartElement(ATOM, "author");
		element("name", feed.author());
		this.xml.writeEndElement();
		for (AtomFeed.Entry entry : feed.entries()) {
			entry(entry);
		}
		this.xml.writeCharacters("\n");
		this.xml.writeEndElement();
		this.xml.writeCharacters("\n");
		this.xml.writeEndDocument();
	}

	private void entry(AtomFeed.Entry entry) throws XMLStreamException {
		this.xml.writeCharacters("\n");
		this.xml.writeStartElement(ATOM, "entry");
		element("id", entry.id().toString());
		element("title", entry.title());
		element("published", time(entry.sent()));
		element("updated", time(entry.sent()));
		link("alternate", CapWriter.MEDIA_TYPE, entry.alert().toString());
		link("related", "text/html", entry.page().toString());
		category("urn:oasis:names:tc:emergency:cap:1.2:event", entry.event());
		category("urn:oasis:names:tc:emergency:cap:1.2:severity", entry.severity());
		this.xml.writeCharacters("\n  ");
		this.xml.writeStartElement(ATOM, "summary");
		this.xml.writeAttribute("type", "text");
		this.xml.writeCharacters(entry.summary());
		this.xml.writeEndElement();
		for (Ring ring : entry.rings()) {
			this.xml.writeCharacters("\n  ");
			this.xml.writeStartElement(GEORSS, "polygon");
			this.xml.writeCharacters(polygon(ring));
			this.xml.writeEndElement();
		}
		this.xml.writeCharacters("\n");
		this.xml.writeEndElement();
	}

	private void category(String scheme, String term) throws XMLStreamException {
		this.xml.writeCharacters("\n  ");
		this.xml.writeEmptyElement(ATOM, "category");
		this.xml.writeAttribute("scheme", scheme);
		this.xml.writeAttribute("term", term);
	}

	/** Of the latitudes and longitudes of GeoRSS, each is a word of its own. */
	private static String polygon(Ring ring) {
		StringJoiner words = new StringJoiner(" ");
		for (Position one : ring.positions()) {
			words.add(degrees(one.latitude())).add(degrees(one.longitude()));
		}
		return words.toString();
	}

	private static String degrees(double value) {
		return BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN).toPlainString();
	}

	private void link(String rel, String type, String href) throws XMLStreamException {
		this.xml.writeCharacters("\n  ");
		this.xml.writeEmptyElement(ATOM, "link");
		this.xml.writeAttribute("rel", rel);
		this.xml.writeAttribute("type", type);
		this.xml.writeAttribute("href", href);
	}

	private void element(String name, String text) throws XMLStreamException {
		this.xml.writeCharacters("\n  ");
		this.xml.writeStartElement(ATOM, name);
		this.xml.writeCharacters(text);
		this.xml.writeEndElement();
	}

	/** RFC 3339, in UTC. */
	private static String time(Instant time) {
		return time.truncatedTo(ChronoUnit.SECONDS).toString();
	}

}
