package org.leafward.lookalikes;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.People;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareLog;
import org.leafward.care.WorkDone;
import org.leafward.climate.Observations;
import org.leafward.climate.ObservedDay;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.Stations;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.lookalikes.core.Answers;
import org.leafward.lookalikes.core.Differential;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.lookalikes.workshop.KeyWorkshop;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.leafward.plants.SpeciesId;
import org.leafward.register.NewPlanting;
import org.leafward.register.NewSite;
import org.leafward.register.NewSoilTest;
import org.leafward.register.Placement;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.SiteId;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTests;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.Wind;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ContextConfiguration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** The record of a real planting, and a key that a specialist changes, on a database. */
@SpringBootTest(properties = "spring.quartz.auto-startup=false")
@ContextConfiguration(initializers = TestDatabase.class)
class KeyServicesTests {

	private static final GeoPoint POINT = new GeoPoint(41.6, -71.5, 30);

	private static final ZoneId ZONE = ZoneId.of("America/New_York");

	@Autowired
	private RecordReader records;

	@Autowired
	private LookalikeKeys keys;

	@Autowired
	private KeyWorkshop workshop;

	@Autowired
	private Register register;

	@Autowired
	private People people;

	@Autowired
	private SoilTests soilTests;

	@Autowired
	private CareLog log;

	@Autowired
	private Stations stations;

	@Autowired
	private Observations observations;

	@Autowired
	private Clock clock;

	@Test
	void theRecordOfAPlantingSaysWhatIsInRegisterLogWeatherAndSoilTest() {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZONE);
		StationId station = new StationId("XX000090001");
		this.stations.register(new Station(station, "Made up for a hot summer", POINT, true));
		this.observations.load(station,
				IntStream.rangeClosed(1, 230)
					.mapToObj((back) -> new ObservedDay(today.minusDays(back), 210, 345, 0, 0, 55))
					.toList());
		PersonId ada = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id();
		SiteId site = this.register
			.addSite(ada, new NewSite("Garden", "", POINT, ZONE, SoilTexture.LOAM, Sun.FULL_SUN, Wind.EXPOSED))
			.id();
		PlantingId oak = this.register
			.addPlantings(site, List.of(new NewPlanting(new SpeciesId("quercus-palustris"), "oak by the drive", 1,
					today.minusMonths(20), Placement.GROUND, false, true)))
			.get(0)
			.id();
		this.soilTests.keep(site, new NewSoilTest(oak, today.minusDays(40),
				new SoilFigures(7.9, 5.2, SoilExtract.SATURATED_PASTE, 3.0, null, null), 20, SoilDrainage.SLOW, ""),
				ada);
		this.log.log(site, oak, "move", WorkDone.on(today.minusDays(5), "into the sun"), ada);
		List<RecordLine> lines = this.records.of(oak, today);
		assertThat(lines).extracting(RecordLine::words)
			.contains("It is an oak", "It is known to suffer from this: Oak wilt", "De-icing salt reaches it",
					"The soil has a pH of 7.9", "The bed drains slowly")
			.anySatisfy((words) -> assertThat(words).startsWith("It was planted on "))
			.anySatisfy((words) -> assertThat(words).startsWith("It was moved on "))
			.anySatisfy((words) -> assertThat(words).contains("it was 32 °C (90 °F) or more, with hardly any rain"));
		assertThat(lines).allSatisfy((line) -> assertThat(line.from()).isNotBlank());
		assertThat(lines).extracting(RecordLine::id).doesNotHaveDuplicates();
		assertThat(this.records.of(oak, today)).as("the same facts, the same lines").isEqualTo(lines);
		assertThat(this.records.ofSpecies("quercus-palustris")).isNotEmpty()
			.allSatisfy((line) -> assertThat(line.kind()).isEqualTo(RecordLine.Kind.SPECIES));
		assertThat(this.records.ofSpecies("no-such-species")).isEmpty();
		assertThatExceptionOfType(NotThere.class)
			.isThrownBy(() -> this.records.of(new PlantingId(UUID.randomUUID()), today));
	}

	@Test
	void aChangedFileIsTriedThenPublishedThenTakenBack() {
		PersonId ada = this.people.join("Ada", UUID.randomUUID() + "@example.org", ZONE).id();
		String file = "pairs.yaml";
		String before = this.workshop.contents().get(file);
		String version = this.keys.current().version();
		String broken = before.replace("[winter-burn, salt-spray]", "[winter-burn, salt-spry]");
		assertThatExceptionOfType(BrokenKnowledge.class).isThrownBy(() -> this.workshop.draft(file, broken))
			.withMessageContaining("lookalikes/pairs.yaml:4:")
			.withMessageContaining("there is no cause 'salt-spry'; write the ids of two causes");
		String changed = before.replace("Walk away from the road.", "Walk off from the road.");
		assertThat(this.workshop.draft(file, changed).key().pairs().get(0).split()).startsWith("Walk off");
		assertThat(this.keys.current().version()).isEqualTo(version);
		int base = this.workshop.version(file);
		KeyVersion published = this.workshop.publish(file, base, changed, "Plainer", ada);
		assertThat(this.workshop.version(file)).isEqualTo(published.version()).isEqualTo(base + 1);
		assertThat(this.workshop.contents().get(file)).isEqualTo(changed);
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.workshop.publish(file, base, before, "Late", ada))
			.withMessageContaining("was published in between");
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.workshop.publish(file, base + 1, changed, "Again", ada))
			.withMessageContaining("nothing differs");
		this.workshop.goBack(file, base + 1, 0, "The old words are better", ada);
		assertThat(this.workshop.contents().get(file)).isEqualTo(before);
		assertThat(Differential.rank(this.keys.current(), Answers.EMPTY, List.of()).known()).isFalse();
		assertThat(this.workshop.versions(file, 0, 10)).hasSize(2);
	}

	@Test
	void namesOfFilesStayInTheFolder() {
		assertThatExceptionOfType(BadInput.class)
			.isThrownBy(() -> this.workshop.draft("../plants/oaks.yaml", "title: x"));
	}

}
