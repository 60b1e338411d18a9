package org.leafward.advisories.cap;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.xml.XMLConstants;
import javax.xml.transform.stream.StreamSource;
import javax.xml.validation.Schema;
import javax.xml.validation.SchemaFactory;
import org.xml.sax.SAXException;

/** The schema that was written from the tables of CAP 1.2, sections 3.2 and 3.3.2. */
public final class CapSchema {

	private static final Schema SCHEMA = read();

	private CapSchema() {
	}

	private static Schema read() {
		try {
			return SchemaFactory.newInstance(XMLConstants.W3C_XML_SCHEMA_NS_URI)
				.newSchema(CapSchema.class.getResource("/schema/cap-1.2.xsd"));
		}
		catch (SAXException ex) {
			throw new IllegalStateException(ex);
		}
	}

	/**
	 * Checks a document.
	 * @param document XML
	 * @throws SAXException when it breaks the schema
	 */
	public static void check(byte[] document) throws SAXException {
		try {
			SCHEMA.newValidator().validate(new StreamSource(new ByteArrayInputStream(document)));
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
	}

}
