package org.leafward.care.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.core.phase.LoggedEvent;
import org.leafward.care.core.phase.Phase;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.Station;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.RecordFixture;
import org.leafward.climate.core.StationClimate;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/** The estimates that come with the server, at a real place: Central Park in New York. */
class PhenologyDatesTests {

	private static final GeoPoint POINT = new GeoPoint(40.7789, -73.9692, 39.6);

	private static final int SEASON = 2026;

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	private static Phenology phenology;

	@BeforeAll
	static void read() {
		phenology = new PhenologyReader(new KnowledgeReader(), KnownPlants.of(CATALOGUE))
			.read(new KnowledgeFiles("").of("phenology"));
	}

	private static PlaceMarkers centralPark() {
		StationClimate climate = new StationClimate(
				new Station(RecordFixture.CENTRAL_PARK, "Central Park", POINT, false),
				RecordFixture.real(RecordFixture.CENTRAL_PARK));
		return new BlendedPlace(Hemisphere.NORTH,
				Neighbour.choose(POINT, List.of(climate.station()), (station) -> Optional.of(climate)));
	}

	/** Empty where the plant has no such phase or it hangs on the planting. */
	private static Optional<LocalDate> date(PlaceMarkers place, String phase, Species plant) {
		Anchor anchor = phenology.estimate(phase, plant).orElse(null);
		if (anchor instanceof MarkerAnchor marker) {
			return place.on(marker.marker(), SEASON)
				.map((found) -> found.date().plusDays(marker.days().of(plant.id())));
		}
		if (anchor instanceof PhaseAnchor other) {
			return date(place, other.phase(), plant).map((found) -> found.plusDays(other.days().of(plant.id())));
		}
		return Optional.empty();
	}

	/**
	 * Ranges in which the middle year of a spell of thirty falls in and around New York.
	 * Read: apple green tip at Biglerville PA 16 to 25 March (Penn State Extension, 2016
	 * and 2017) and forecast for 13 April in the Hudson Valley (Cornell, cold spring of
	 * 2013), full bloom at Biglerville 21 April 2016; fall color of New York's parks
	 * peaks in early to mid November, oaks last, in late November (New York City parks
	 * department). All others: common practice of gardeners there.
	 */
	@ParameterizedTest
	@CsvSource({ "forsythia-bloom, forsythia-x-intermedia, 03-20, 04-15", "bud-break, malus-domestica, 03-16, 04-13",
			"bloom-start, malus-domestica, 04-14, 05-05", "bloom-start, cercis-canadensis, 04-10, 04-28",
			"bloom-start, syringa-vulgaris, 04-20, 05-10", "bloom-end, syringa-vulgaris, 05-05, 05-25",
			"bud-break, quercus-rubra, 04-20, 05-05", "leaf-expanded, acer-saccharum, 05-01, 05-25",
			"bloom-start, rhododendron-catawbiense, 05-05, 05-25", "candle-expanded, pinus-mugo, 05-20, 06-15",
			"bloom-start, rosa-hybrid-tea, 05-20, 06-07", "bloom-start, hydrangea-macrophylla, 06-05, 06-30",
			"bloom-start, hibiscus-syriacus, 07-01, 07-25", "bloom-start, philadelphus-coronarius, 05-20, 06-12",
			"bloom-start, hamamelis-virginiana, 10-05, 11-05", "harvest-start, fragaria-x-ananassa, 05-20, 06-15",
			"leaf-drop, acer-saccharum, 11-01, 11-15", "leaf-drop, tilia-cordata, 11-03, 11-20",
			"leaf-drop, quercus-rubra, 11-12, 12-05" })
	void fallsWhereItFallsInNewYork(String phase, String plant, String from, String to) {
		LocalDate date = date(centralPark(), phase, CATALOGUE.find(new SpeciesId(plant)).orElseThrow()).orElseThrow();
		assertThat(date).isBetween(MonthDay.parse("--" + from).atYear(SEASON),
				MonthDay.parse("--" + to).atYear(SEASON));
	}

	/** A bud swells before it breaks, and so on through the year, whatever the plant. */
	@Test
	void phasesOfEveryPlantComeInTheirOrder() {
		PlaceMarkers place = centralPark();
		for (Species plant : CATALOGUE.all()) {
			for (List<String> order : List.of(
					List.of("bud-swell", "bud-break", "leaf-expanded", "leaf-drop", "dormant"),
					List.of("bloom-start", "bloom-end"), List.of("harvest-start", "harvest-end"))) {
				List<LocalDate> dates = order.stream().flatMap((phase) -> date(place, phase, plant).stream()).toList();
				assertThat(dates).as("%s of %s", order, plant.id().value()).isSorted().doesNotHaveDuplicates();
			}
		}
	}

	@Test
	void everyWoodyPlantIsEstimatedFromBudToRest() {
		assertThat(CATALOGUE.all()).filteredOn((plant) -> plant.groups().contains("woody"))
			.allSatisfy(
					(plant) -> assertThat(List.of("bud-swell", "bud-break", "leaf-expanded", "bloom-start", "bloom-end",
							"leaf-drop", "dormant"))
						.allMatch((phase) -> phenology.estimate(phase, plant).isPresent()));
		assertThat(phenology.phases()).allSatisfy((phase) -> assertThat(phase.lookFor()).endsWith("."));
	}

	/** The anchors of the reference windows, in its own spelling. */
	@Test
	void everyPhaseAndEventOfTheReferenceWindowsIsThere() throws IOException {
		Set<String> wanted = new TreeSet<>();
		Set<String> events = new TreeSet<>();
		Pattern anchor = Pattern.compile(
				",(EVENT:[a-z_]+|BUD_[A-Z]+|LEAF_[A-Z]+|BLOOM_[A-Z]+|[A-Z]+_EXPANDED|HALF_INCH_GREEN|FORSYTHIA_BLOOM|DORMANT|HARVEST_[A-Z]+),");
		for (String line : Files.readAllLines(SharedData.file("knowledge/care-windows.csv"))) {
			Matcher found = anchor.matcher(line);
			for (int at = 0; found.find(at); at = found.end() - 1) {
				String name = found.group(1).toLowerCase(Locale.ROOT).replace('_', '-');
				if (name.startsWith("event:")) {
					events.add(name.substring(6).equals("drift") ? "herbicide-drift" : name.substring(6));
				}
				else {
					wanted.add(name);
				}
			}
		}
		assertThat(wanted).hasSizeGreaterThanOrEqualTo(12);
		assertThat(phenology.phases()).extracting(Phase::name).containsAll(wanted);
		assertThat(events).hasSize(5);
		assertThat(phenology.events()).extracting(LoggedEvent::name).containsAll(events);
	}

}
