package org.leafward.regions;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.springframework.mock.env.MockEnvironment;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

class RegionsTests {

	private static final String COUNTY = """
			{"type": "FeatureCollection", "title": "One county", "features": [
			{"type": "Feature",
			 "properties": {"name": "%s", "region": "US-MI", "zone": "%s", "elevation-metres": 250, "fips": 1},
			 "geometry": {"type": "%s", "coordinates": %s}}
			]}
			""";

	private static final String SQUARE = "[[[-85, 44], [-84, 44], [-84, 45], [-85, 45], [-85, 44]]]";

	private static Regions demo(String directory) {
		MockEnvironment demo = new MockEnvironment();
		demo.setActiveProfiles("demo");
		return new Regions(new KnowledgeFiles(directory), new KnowledgeReader(), demo);
	}

	private static List<Problem> problems(String text) {
		try {
			new RegionReader(new KnowledgeReader(), false)
				.read(List.of(KnowledgeFile.of("regions/mine.geojson", text)));
			return List.of();
		}
		catch (BrokenKnowledge ex) {
			return ex.problems();
		}
	}

	/** RFC 7946, section 3.1.6: outer rings run counter-clockwise, holes clockwise. */
	@Test
	void ourShapesRunAsTheStandardAsks() {
		assertThat(demo("").counties()).extracting(County::name)
			.containsExactly("Alder County", "Merrow County", "Sable County");
		assertThat(demo("").counties()).flatExtracting((one) -> one.area().polygons()).allSatisfy((polygon) -> {
			assertThat(polygon.outer().signedArea()).isPositive();
			assertThat(polygon.holes()).allMatch((hole) -> hole.signedArea() < 0);
		});
	}

	@Test
	void aCountyHasACodeAndAPlaceInside() {
		Regions regions = demo("");
		County merrow = regions.find("us-ia-merrow-county").orElseThrow();
		assertThat(merrow.zone()).isEqualTo(ZoneId.of("America/Chicago"));
		assertThat(regions.countyAt(merrow.somewhere())).contains(merrow);
		assertThat(merrow.somewhere().elevationMetres()).isEqualTo(365);
		assertThat(regions.find("us-ia-nowhere")).isEmpty();
		assertThat(regions.countyAt(new GeoPoint(0, 0, 0))).isEmpty();
	}

	@Test
	void inventedPlacesAreForTheDemoOnly() {
		Regions real = new Regions(new KnowledgeFiles(""), new KnowledgeReader(), new MockEnvironment());
		assertThat(real.counties()).isEmpty();
		assertThat(real.map(300)).isEmpty();
	}

	@Test
	void anOperatorsFilesLieOverOurs(@TempDir Path own) throws IOException {
		Path folder = Files.createDirectory(own.resolve("regions"));
		Files.writeString(folder.resolve("kestrel-basin.geojson"),
				COUNTY.formatted("Holt", "America/Detroit", "Polygon", SQUARE));
		assertThat(demo(own.toString()).counties()).extracting(County::code).containsExactly("us-mi-holt");
	}

	@Test
	void theStandardsClockwiseRingIsTakenToo() {
		assertThat(problems(COUNTY.formatted("Holt", "America/Detroit", "Polygon",
				"[[[-85, 44], [-85, 45], [-84, 45], [-84, 44], [-85, 44]]]")))
			.isEmpty();
	}

	@Test
	void everyMistakeHasItsLineAndAWayToMendIt() {
		List<Problem> swapped = problems(COUNTY.formatted("Holt", "Americas", "Polygon", "[[[44, -95]]]"));
		assertThat(swapped).extracting(Problem::words)
			.satisfiesExactly(
					(shape) -> assertThat(shape).startsWith("regions/mine.geojson:4:")
						.contains("Holt: the position 44.0, -95.0 is not on the earth; write longitude"),
					(zone) -> assertThat(zone).startsWith("regions/mine.geojson:3:")
						.contains("'Americas' is not a time zone", "America/New_York"));
		assertThat(problems(COUNTY.formatted("Holt", "America/Detroit", "MultiPolygon", SQUARE))).singleElement()
			.satisfies((one) -> assertThat(one.words()).contains("a MultiPolygon a list of such lists"));
		assertThat(problems(COUNTY.formatted("Holt", "America/Detroit", "Circle", SQUARE))).singleElement()
			.satisfies((one) -> assertThat(one.words()).contains("'Circle' is not known", "Polygon, MultiPolygon"));
		assertThat(
				problems(COUNTY.formatted("Holt", "America/Detroit", "Polygon", SQUARE).replace("\"US-MI\"", "\"MI\"")))
			.singleElement()
			.satisfies((one) -> assertThat(one.words()).contains("ISO 3166-2"));
		assertThat(problems("{\"type\": \"FeatureCollection\", \"title\": ")).isNotEmpty();
		String twice = COUNTY.formatted("Holt", "America/Detroit", "Polygon", SQUARE);
		String feature = twice.substring(twice.indexOf("{\"type\": \"Feature\","), twice.lastIndexOf(']'));
		assertThat(problems(twice.substring(0, twice.lastIndexOf(']')) + "," + feature + "]}")).singleElement()
			.satisfies((one) -> assertThat(one.words()).contains("'Holt' is there twice"));
		assertThat(problems(twice.replace("\"zone\": \"America/Detroit\", ", ""))).singleElement()
			.satisfies((one) -> assertThat(one.mend()).contains("zone"));
	}

	@Test
	void theMapIsXmlWithoutScriptAndAClickFindsItsPlace() throws Exception {
		RegionMap map = demo("").map(344).orElseThrow();
		Document document = DocumentBuilderFactory.newInstance()
			.newDocumentBuilder()
			.parse(new InputSource(new StringReader(map.document("text { fill: red }"))));
		assertThat(document.getElementsByTagName("path").getLength()).isEqualTo(4);
		assertThat(document.getDocumentElement().getAttribute("aria-label")).contains("Alder County");
		assertThat(document.getElementsByTagName("script").getLength()).isZero();
		for (County county : demo("").counties()) {
			GeoPoint inside = county.somewhere();
			int x = (int) Math.round(map.projection().x(inside.longitude()));
			int y = (int) Math.round(map.projection().y(inside.latitude()));
			GeoPoint found = map.at(x, y).orElseThrow();
			assertThat(found.longitude()).isCloseTo(inside.longitude(), within(0.002));
			assertThat(demo("").countyAt(found)).contains(county);
		}
		assertThat(map.at(0, 0)).as("a key sends the corner").isEmpty();
		assertThat(map.at(-5, 2000)).isEmpty();
		assertThat(map.marking(new GeoPoint(42.1, -91.5, 0)).svg()).contains("chosen-point");
		assertThat(map.marking(new GeoPoint(-42.1, 91.5, 0)).svg()).doesNotContain("chosen-point");
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> demo("").map(100_000));
	}

	/** A map of many detailed counties stays small; two points a pixel are enough. */
	@Test
	void detailThatNobodySeesIsLeftOut() {
		String circle = Stream.iterate(0, (i) -> i + 1)
			.limit(20_001)
			.map((i) -> "[%.6f, %.6f]".formatted(-85 + Math.cos(i % 20_000 * Math.PI / 10_000),
					44 + Math.sin(i % 20_000 * Math.PI / 10_000)))
			.reduce((one, other) -> one + "," + other)
			.orElseThrow();
		RegionReader read = new RegionReader(new KnowledgeReader(), false)
			.read(List.of(KnowledgeFile.of("regions/round.geojson",
					COUNTY.formatted("Round", "America/Detroit", "Polygon", "[[" + circle + "]]"))));
		RegionMap map = new RegionMap(read.counties(), read.towns(), 400, java.util.Optional.empty());
		assertThat(map.svg().length()).isLessThan(40_000);
	}

}
