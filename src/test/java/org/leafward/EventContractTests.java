package org.leafward;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.accounts.AddressConfirmed;
import org.leafward.advisories.AdvisoryCancelled;
import org.leafward.advisories.AdvisoryIssued;
import org.leafward.advisories.AdvisoryUpdated;
import org.leafward.care.PlanChanged;
import org.leafward.care.RulePackPublished;
import org.leafward.climate.ForecastChanged;
import org.leafward.climate.ObservationsLoaded;
import org.leafward.feeds.FeedExpired;
import org.leafward.lookalikes.CaseClosed;
import org.leafward.register.BedsChanged;
import org.leafward.register.PlantingsChanged;
import org.leafward.register.SitePlaceChanged;
import org.leafward.register.SiteRegistered;
import org.leafward.register.SoilTestsChanged;
import org.leafward.register.WateringsChanged;
import org.leafward.workdays.SignUpChanged;
import org.leafward.workdays.WorkdayCalledOff;
import org.leafward.workdays.WorkdayFixed;
import org.leafward.workdays.WorkdayMoved;
import org.springframework.transaction.event.TransactionalEventListener;
import tools.jackson.databind.json.JsonMapper;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * Events wait in the database as JSON, over restarts and upgrades. Their shape may not
 * change unnoticed: rename a field and rows that wait for a listener can't be read any
 * more.
 */
class EventContractTests {

	private static final UUID SITE = UUID.fromString("00000000-0000-4000-8000-000000000001");

	private static final UUID PERSON = UUID.fromString("00000000-0000-4000-8000-000000000002");

	private final JsonMapper json = JsonMapper.builder().build();

	static List<Object> events() {
		return List.of(new SiteRegistered(SITE, PERSON), new PlantingsChanged(SITE), new SitePlaceChanged(SITE),
				new ObservationsLoaded("USW00094728", 40.7789, -73.9692, LocalDate.parse("1869-01-01"),
						LocalDate.parse("2020-01-03")),
				new ForecastChanged("USW00094728", 40.7789, -73.9692, LocalDate.parse("2026-11-25"),
						LocalDate.parse("2026-12-01")),
				new WateringsChanged(SITE), new AddressConfirmed(PERSON), new SoilTestsChanged(SITE),
				new PlanChanged(SITE, PERSON, 3, 2, 1, Instant.parse("2026-11-25T12:00:00Z")),
				new RulePackPublished("hedges", 3, Instant.parse("2026-11-25T12:00:00Z")),
				new FeedExpired(SITE, PERSON), new BedsChanged(SITE),
				new CaseClosed(SITE, "winter-burn", "HELP_DESK", "Alder County", 42.3, -91.4, "buxus-sempervirens",
						LocalDate.parse("2026-03-02"), LocalDate.parse("2026-03-20")),
				new WorkdayFixed(SITE, PERSON, Instant.parse("2026-11-25T12:00:00Z")),
				new WorkdayMoved(SITE, PERSON, LocalDate.parse("2026-11-28"), LocalDate.parse("2026-12-05"), 2,
						Instant.parse("2026-11-25T12:00:00Z")),
				new WorkdayCalledOff(SITE, PERSON, LocalDate.parse("2026-11-28"),
						Instant.parse("2026-11-25T12:00:00Z")),
				new SignUpChanged(SITE, SITE, PERSON, "IN", Instant.parse("2026-11-25T12:00:00Z")),
				new AdvisoryIssued(SITE, PERSON, Instant.parse("2026-11-25T12:00:00Z"),
						Instant.parse("2026-11-26T06:00:00Z"), Instant.parse("2026-11-27T06:00:00Z"), "Moderate",
						Set.of("us-ia-alder-county")),
				new AdvisoryUpdated(SITE, PERSON, Instant.parse("2026-11-25T12:00:00Z"),
						Instant.parse("2026-11-26T06:00:00Z"), Instant.parse("2026-11-27T06:00:00Z"), "Moderate",
						Set.of("us-ia-alder-county")),
				new AdvisoryCancelled(SITE, PERSON, Instant.parse("2026-11-25T12:00:00Z"),
						Instant.parse("2026-11-26T06:00:00Z"), Instant.parse("2026-11-27T06:00:00Z"), "Moderate",
						Set.of("us-ia-alder-county")));
	}

	@ParameterizedTest
	@MethodSource("events")
	void keepsItsShape(Object event) throws IOException {
		Path file = Path.of("src/test/resources/events", event.getClass().getName() + ".json");
		assertThat(this.json.writeValueAsString(event)).isEqualTo(Files.readString(file).strip());
		assertThat(this.json.readValue(Files.readString(file), event.getClass())).isEqualTo(event);
	}

	@Test
	void noEventIsForgottenHere() {
		Set<String> heard = new ClassFileImporter().withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
			.importPackages("org.leafward")
			.stream()
			.flatMap((type) -> type.getMethods().stream())
			.filter((method) -> method.isAnnotatedWith(TransactionalEventListener.class)
					|| method.isMetaAnnotatedWith(TransactionalEventListener.class))
			.map((method) -> method.getRawParameterTypes().get(0).getName())
			.collect(Collectors.toCollection(TreeSet::new));
		assertThat(heard).isEqualTo(events().stream()
			.map((event) -> event.getClass().getName())
			.collect(Collectors.toCollection(TreeSet::new)));
	}

}
