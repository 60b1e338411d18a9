package org.leafward.advisories.atom;

import com.rometools.rome.feed.atom.Entry;
import com.rometools.rome.feed.atom.Feed;
import com.rometools.rome.feed.atom.Link;
import com.rometools.rome.io.WireFeedInput;
import java.io.ByteArrayInputStream;
import java.io.InputStreamReader;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

import static org.assertj.core.api.Assertions.assertThat;

/** Feeds read back by ROME 2.1.0, which knows RFC 4287. */
class AtomWriterTests {

	private static final Instant SENT = Instant.parse("2027-04-20T17:00:00Z");

	private static final Ring RING = new Ring(List.of(new Position(-91.86, 41.78), new Position(-91.6, 41.74),
			new Position(-91.38, 41.76), new Position(-91.86, 41.78)));

	private static AtomFeed feed(int entries) {
		return new AtomFeed(URI.create("urn:uuid:0b0e6f0e-6f0d-4f7e-8d0b-5e5b0d2f0a11"),
				"Advisories for \"Alder\" & Sable < 2", "What is in force", SENT,
				URI.create("https://a.example/feed.atom"), URI.create("https://a.example/advisories/alder"),
				"Extensión <del> valle",
				IntStream.range(0, entries)
					.mapToObj(
							(i) -> new AtomFeed.Entry(URI.create("urn:uuid:00000000-0000-4000-8000-%012d".formatted(i)),
									"Helada: −3 °C & viento " + i, "línea\nnueva <b>" + i, SENT.minusSeconds(i),
									URI.create("https://a.example/m/" + i + ".cap.xml"),
									URI.create("https://a.example/" + i), "Late freeze", "Moderate", List.of(RING)))
					.toList());
	}

	private static Feed read(byte[] octets) throws Exception {
		return (Feed) new WireFeedInput(true, Locale.ROOT)
			.build(new InputStreamReader(new ByteArrayInputStream(octets), StandardCharsets.UTF_8));
	}

	@Test
	void anotherReaderSeesTheSame() throws Exception {
		AtomFeed feed = feed(3);
		Feed seen = read(AtomWriter.write(feed));
		assertThat(seen.getFeedType()).isEqualTo("atom_1.0");
		assertThat(seen.getId()).isEqualTo(feed.id().toString());
		assertThat(seen.getTitle()).isEqualTo(feed.title());
		assertThat(seen.getUpdated().toInstant()).isEqualTo(SENT);
		assertThat(seen.getAuthors()).singleElement()
			.satisfies((one) -> assertThat(one.getName()).isEqualTo(feed.author()));
		assertThat(seen.getOtherLinks()).filteredOn((one) -> "self".equals(one.getRel()))
			.extracting(Link::getHref)
			.containsExactly("https://a.example/feed.atom");
		assertThat(seen.getEntries()).hasSize(3);
		for (int i = 0; i < 3; i++) {
			Entry entry = seen.getEntries().get(i);
			AtomFeed.Entry given = feed.entries().get(i);
			assertThat(entry.getId()).isEqualTo(given.id().toString());
			assertThat(entry.getTitle()).isEqualTo(given.title());
			assertThat(entry.getSummary().getValue()).isEqualTo(given.summary());
			assertThat(entry.getUpdated().toInstant()).isEqualTo(given.sent());
			assertThat(entry.getAlternateLinks()).singleElement().satisfies((one) -> {
				assertThat(one.getType()).isEqualTo("application/cap+xml");
				assertThat(one.getHref()).isEqualTo(given.alert().toString());
			});
			assertThat(entry.getCategories()).extracting((one) -> one.getTerm())
				.containsExactly("Late freeze", "Moderate");
		}
	}

	@Test
	void aFeedWithoutEntriesIsOneToo() throws Exception {
		assertThat(read(AtomWriter.write(feed(0))).getEntries()).isEmpty();
	}

	/**
	 * RFC 4287, section 4.1: id, title and updated once each, and the author; GeoRSS
	 * Simple has latitude first. By the JDK's parser.
	 */
	@Test
	void whatMustStandThereStandsThereOnce() throws Exception {
		DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
		factory.setNamespaceAware(true);
		Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(AtomWriter.write(feed(2))));
		for (String name : List.of("id", "title", "updated")) {
			assertThat(children(document.getDocumentElement().getChildNodes(), name)).as(name).isEqualTo(1);
		}
		assertThat(document.getElementsByTagNameNS("http://www.georss.org/georss", "polygon").item(0).getTextContent())
			.isEqualTo("41.780 -91.860 41.740 -91.600 41.760 -91.380 41.780 -91.860");
	}

	private static long children(NodeList nodes, String name) {
		return IntStream.range(0, nodes.getLength()).filter((i) -> name.equals(nodes.item(i).getLocalName())).count();
	}

}
