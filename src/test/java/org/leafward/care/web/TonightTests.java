package org.leafward.care.web;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.leafward.accounts.PersonId;
import org.leafward.care.CareTask;
import org.leafward.care.TaskId;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Work;
import org.leafward.care.web.Tonight.Night;
import org.leafward.care.web.Tonight.Risk;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;
import org.leafward.reminders.TaskFixture;

import static org.assertj.core.api.Assertions.assertThat;

/** Nights made up by hand. Temperatures: 0 °C is 32 °F, a degree Celsius 1.8 °F. */
class TonightTests {

	private static final Instant NOW = Instant.parse("2026-05-20T20:00:00Z");

	private static CareTask task(Work work, String plant, String site) {
		return new CareTask(new TaskId(UUID.randomUUID()), null, plant, new SiteId(TaskFixture.id(site)), site,
				new PersonId(TaskFixture.id("ada")), "frost-nights/" + work, 2026, 141, TaskKind.DO,
				DayWindow.of(LocalDate.of(2026, 5, 21)), TaskFixture.words(), TaskState.PLANNED, null, 0, NOW, NOW,
				work, 1);
	}

	private static Night night(String site, @Nullable Double low, CareTask... open) {
		return new Night(site, low, (low != null) ? NOW.minusSeconds(3 * 3600 + 5) : null, List.of(open), 0);
	}

	@Test
	void aRiskNamesTheLowThePlaceAndWhatToDo() {
		Tonight night = Tonight.of(
				List.of(night("Orchard Lane", -2.2, task(Work.MOVE, "basil pot", "Orchard Lane"),
						task(Work.COVER, "tomatoes", "Orchard Lane"), task(Work.COVER, "peppers", "Orchard Lane"))),
				NOW);
		Risk risk = night.risks().get(0);
		assertThat(risk.low()).isEqualTo("Tonight −2 °C (28 °F)");
		assertThat(risk.sites()).containsExactly("Orchard Lane");
		assertThat(risk.deeds().toString())
			.isEqualTo("[Deed[verb=Cover, plants=[tomatoes, peppers]], Deed[verb=Bring in, plants=[basil pot]]]");
		assertThat(night.made()).isEqualTo("The forecast is 3 hours old.");
		assertThat(night.quiet()).isNull();
	}

	@Test
	void sitesWithTheSameLowAreToldTogetherAndTheColdestFirst() {
		Tonight night = Tonight.of(List.of(night("Hill", 1.0, task(Work.COVER, "peppers", "Hill")),
				night("Mill Road", -1.8, task(Work.COVER, "beans", "Mill Road")),
				night("Orchard Lane", -2.2, task(Work.COVER, "tomatoes", "Orchard Lane"))), NOW);
		assertThat(night.risks()).extracting(Risk::low)
			.containsExactly("Tonight −2 °C (28 °F)", "Tonight 1 °C (34 °F)");
		assertThat(night.risks().get(0).sites()).containsExactly("Mill Road", "Orchard Lane");
		assertThat(night.risks().get(0).deeds().get(0).plants()).containsExactly("beans at Mill Road",
				"tomatoes at Orchard Lane");
	}

	@Test
	void longListsAreShortened() {
		CareTask[] many = IntStream.range(0, 30)
			.mapToObj((number) -> task(Work.COVER, "bed " + number, "Hill"))
			.toArray(CareTask[]::new);
		assertThat(Tonight.of(List.of(night("Hill", -3.0, many)), NOW).risks().get(0).deeds().get(0).plants())
			.containsExactly("bed 0", "bed 1", "bed 2", "27 more plantings");
		List<Night> nights = IntStream.range(0, 9)
			.mapToObj((low) -> night("Site " + low, (double) -low, task(Work.COVER, "beans", "Site " + low)))
			.toList();
		assertThat(Tonight.of(nights, NOW).risks()).hasSize(4);
		assertThat(Tonight.of(nights, NOW).more()).isEqualTo(5);
	}

	@Test
	void aNightWithoutRiskIsOneQuietLineAndNoForecastNone() {
		Tonight mild = Tonight.of(List.of(night("Hill", 8.0), night("Mill Road", 7.6)), NOW);
		assertThat(mild.risks()).isEmpty();
		assertThat(mild.quiet()).isEqualTo("Tonight about 8 °C (46 °F); no cover is called for.");
		assertThat(mild.coldest()).isEqualTo("Mill Road");
		Tonight unknown = Tonight.of(List.of(night("Hill", null)), NOW);
		assertThat(unknown.quiet()).isNull();
		assertThat(unknown.made()).isNull();
		assertThat(unknown.unknown()).isNull();
		assertThat(Tonight.of(List.of(night("Hill", 8.0), night("Far away", null)), NOW).unknown())
			.isEqualTo("Far away");
	}

	@Test
	void whatIsCoveredAlreadyIsNoRisk() {
		Tonight covered = Tonight.of(List.of(new Night("Hill", -2.0, NOW.plusSeconds(9), List.of(), 2)), NOW);
		assertThat(covered.quiet()).isEqualTo("Tonight about −2 °C (28 °F); what had to be covered is noted as done.");
		assertThat(covered.made()).isEqualTo("The forecast is less than an hour old.");
	}

}
