package org.leafward.advisories.cap;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.advisories.core.chain.CapTime;
import org.leafward.regions.core.Position;
import org.leafward.regions.core.Ring;
import org.leafward.support.SharedData;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.abort;

/**
 * Alerts against CAP 1.2: the schema made of its tables, and a reader that is none of
 * ours.
 */
class CapWriterTests {

	private static final List<CapAlert> ALERTS = alerts();

	private static List<CapAlert> alerts() {
		Random random = new Random(20261126);
		List<CapAlert> all = new ArrayList<>(List.of(CapSamples.freeze()));
		IntStream.range(0, 300).forEach((i) -> all.add(CapSamples.any(random)));
		return all;
	}

	/** CAP 1.2, section 3.2: elements, order, number, words of lists. */
	@Test
	void everyAlertKeepsToTheSchema() throws SAXException {
		for (CapAlert alert : ALERTS) {
			CapSchema.check(CapWriter.write(alert));
		}
	}

	@Test
	void theSameAlertGivesTheSameOctets() {
		assertThat(CapWriter.write(CapSamples.freeze())).isEqualTo(CapWriter.write(CapSamples.freeze()));
	}

	/**
	 * The schema has to refuse what the standard forbids, or the test above says nothing.
	 */
	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`',
			value = { "2027-04-20T15:00:00-05:00|2027-04-20T20:00:00Z",
					"2027-04-20T15:00:00-05:00|2027-04-20T15:00:00.5-05:00",
					"2027-04-20T15:00:00-05:00|2027-04-20T15:00:00,05:00", "<severity>Moderate|<severity>moderate",
					"<status>Actual|<status>Real", "advisories@garden.example|advisories garden",
					"-91.86</polygon>|-91.86 </polygon>", "<event>Late freeze</event>|", "<scope>Public</scope>|",
					"<language>en-US</language>|<language>English (US)</language>" })
	void theSchemaRefusesWhatTheStandardForbids(String good, String bad) {
		String document = new String(CapWriter.write(CapSamples.freeze()), StandardCharsets.UTF_8);
		assertThat(document).contains(good);
		String broken = document.replace(good, (bad != null) ? bad : "");
		assertThatThrownBy(() -> CapSchema.check(broken.getBytes(StandardCharsets.UTF_8)))
			.isInstanceOf(SAXException.class);
	}

	/**
	 * The schema itself against the tables of the standard, which lie beside the
	 * checkout.
	 */
	@Test
	void theSchemaHasTheElementsAndWordsOfTheStandard() throws Exception {
		Document schema;
		try (InputStream file = getClass().getResourceAsStream("/schema/cap-1.2.xsd")) {
			schema = DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(file);
		}
		Map<String, String> found = new LinkedHashMap<>();
		NodeList elements = schema.getElementsByTagName("xs:element");
		for (int i = 0; i < elements.getLength(); i++) {
			Element element = (Element) elements.item(i);
			if (!element.hasAttribute("type")) {
				continue;
			}
			Element type = (Element) element.getParentNode().getParentNode();
			String parent = type.hasAttribute("name") ? type.getAttribute("name") : "alert";
			found.put(parent + "," + element.getAttribute("name"), (element.hasAttribute("minOccurs") ? "0" : "1") + ","
					+ (element.hasAttribute("maxOccurs") ? "n" : "1"));
		}
		Map<String, String> published = new LinkedHashMap<>();
		for (String line : Files.readAllLines(SharedData.file("checks/10-cap12-elements.csv"))) {
			String[] field = line.split(",", 5);
			if (!field[0].equals("parent") && !field[1].startsWith("(")) {
				published.put(field[0] + "," + field[1], field[2] + "," + field[3]);
			}
		}
		assertThat(found).containsExactlyInAnyOrderEntriesOf(published);
		List<String> words = new ArrayList<>();
		NodeList enumerations = schema.getElementsByTagName("xs:enumeration");
		for (int i = 0; i < enumerations.getLength(); i++) {
			words.add(((Element) enumerations.item(i)).getAttribute("value"));
		}
		assertThat(words).containsExactlyElementsOf(SharedData.rows(SharedData.file("checks/10-cap12-enumerations.csv"))
			.stream()
			.filter((row) -> !row[0].equals("element"))
			.map((row) -> row[2])
			.toList());
	}

	/** CAP 1.2, section 3.3.2: an offset, never Z; UTC as -00:00. */
	@Test
	void timesHaveOffsets() {
		for (CapAlert alert : ALERTS) {
			String sent = text(CapWriter.write(alert), "sent");
			assertThat(sent).isEqualTo(CapTime.write(alert.sent(), alert.zone())).doesNotContain("Z");
			assertThat(OffsetDateTime.parse(sent).toInstant()).isEqualTo(alert.sent());
		}
	}

	/** CAP 1.2, section 3.2.4: latitude first, the last pair the same as the first. */
	@Test
	void outlinesAreClosedAndBeginWithLatitude() {
		Ring ring = new Ring(List.of(new Position(-91.860049, 41.78), new Position(-91.6, 41.7400501),
				new Position(-91.38, 41.76), new Position(-91.860049, 41.78)));
		assertThat(CapWriter.polygon(ring)).isEqualTo("41.78,-91.86 41.7401,-91.6 41.76,-91.38 41.78,-91.86");
	}

	@Test
	void whatHasBegunHasNoOnset() {
		for (CapAlert alert : ALERTS) {
			String document = new String(CapWriter.write(alert), StandardCharsets.UTF_8);
			assertThat(document.contains("<onset>")).isEqualTo(alert.onset().isAfter(alert.sent()));
		}
	}

	/** Round trip through @dec112/cap-ts 0.3.2, which reads by another parser of XML. */
	@Test
	void anotherReaderSeesTheSame() throws Exception {
		JsonNode seen = askNode(ALERTS.stream().map(CapWriter::write).toList());
		assertThat(seen.size()).isEqualTo(ALERTS.size());
		for (int i = 0; i < ALERTS.size(); i++) {
			same(ALERTS.get(i), seen.get(i));
		}
	}

	private static void same(CapAlert alert, JsonNode seen) {
		assertThat(seen.get("identifier").asString()).isEqualTo(alert.identifier());
		assertThat(seen.get("sender").asString()).isEqualTo(alert.sender());
		assertThat(seen.get("status").asString()).isEqualTo(alert.status().cap());
		assertThat(seen.get("msgType").asString()).isEqualTo(alert.type().cap());
		assertThat(seen.path("references").asString("")).isEqualTo(alert.references());
		assertThat(seen.path("note").asString("")).isEqualTo((alert.note() != null) ? alert.note() : "");
		JsonNode infos = seen.get("info_list");
		assertThat(infos.size()).isEqualTo(alert.texts().size());
		for (int i = 0; i < infos.size(); i++) {
			JsonNode info = infos.get(i);
			CapAlert.Text text = alert.texts().get(i);
			assertThat(info.get("language").asString()).isEqualTo(text.language());
			assertThat(info.get("event").asString()).isEqualTo(text.event());
			assertThat(info.get("headline").asString()).isEqualTo(text.headline());
			assertThat(info.get("description").asString()).isEqualTo(text.description());
			assertThat(info.get("instruction").asString()).isEqualTo(text.instruction());
			assertThat(info.get("severity").asString()).isEqualTo(alert.facts().severity().cap());
			assertThat(info.get("urgency").asString()).isEqualTo(alert.facts().urgency().cap());
			assertThat(info.get("certainty").asString()).isEqualTo(alert.facts().certainty().cap());
			assertThat(info.get("expires").asString()).isEqualTo(CapTime.write(alert.expires(), alert.zone()));
			JsonNode areas = info.get("area_list");
			assertThat(areas.size()).isEqualTo(alert.areas().size());
			for (int k = 0; k < areas.size(); k++) {
				assertThat(areas.get(k).get("areaDesc").asString()).isEqualTo(alert.areas().get(k).name());
				assertThat(areas.get(k).get("polygon_list").size()).isEqualTo(alert.areas().get(k).rings().size());
			}
		}
	}

	private static JsonNode askNode(List<byte[]> documents) throws Exception {
		Path folder = Path.of("src", "test", "js");
		if (!Files.isDirectory(folder.resolve("node_modules/@dec112/cap-ts"))) {
			if ("true".equals(System.getenv("CI"))) {
				throw new AssertionError("missing: npm --prefix src/test/js ci");
			}
			System.err.println("NOT CHECKED with @dec112/cap-ts, missing: npm --prefix src/test/js ci");
			abort("missing: npm --prefix src/test/js ci");
		}
		ByteArrayOutputStream together = new ByteArrayOutputStream();
		for (byte[] document : documents) {
			if (together.size() > 0) {
				together.write(0);
			}
			together.writeBytes(document);
		}
		Path file = Files.createTempFile("alerts", ".xml");
		Path out = Files.createTempFile("seen", ".json");
		Path errors = Files.createTempFile("errors", ".txt");
		try {
			Files.write(file, together.toByteArray());
			Process process = new ProcessBuilder("node", "check-cap.mjs", file.toString()).directory(folder.toFile())
				.redirectOutput(out.toFile())
				.redirectError(errors.toFile())
				.start();
			assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
			assertThat(process.exitValue()).as(Files.readString(errors)).isZero();
			return JsonMapper.shared().readTree(Files.readString(out));
		}
		finally {
			Files.delete(file);
			Files.delete(out);
			Files.delete(errors);
		}
	}

	private static String text(byte[] document, String name) {
		String words = new String(document, StandardCharsets.UTF_8);
		int from = words.indexOf("<" + name + ">") + name.length() + 2;
		return words.substring(from, words.indexOf("</" + name + ">"));
	}

}
