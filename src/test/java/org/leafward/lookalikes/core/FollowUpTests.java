package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.care.AddedTask;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Work;
import org.leafward.lookalikes.key.ConfiguredKey;
import org.leafward.measure.Hemisphere;

import static org.assertj.core.api.Assertions.assertThat;

/** What follows from a finding, on the calendar of an invented place. */
class FollowUpTests {

	private static final LocalDate FOUND = LocalDate.of(2026, 8, 10);

	private static final LocalDate SEEN = LocalDate.of(2026, 7, 20);

	private static final Map<Integer, Span.Freezes> FREEZES = Map.of(2025, freezes(2025), 2026, freezes(2026), 2027,
			freezes(2027));

	private static Span.Freezes freezes(int year) {
		return new Span.Freezes(LocalDate.of(year, 5, 1), LocalDate.of(year, 10, 10));
	}

	private static Cause cause(String id) {
		return ConfiguredKey.get().cause(id).orElseThrow();
	}

	private static FollowUp.Planned plan(Cause cause, LocalDate found, Set<String> asked) {
		return FollowUp.of(cause,
				new FollowUp.Facts(found, SEEN, Hemisphere.NORTH, FREEZES, asked, (rule) -> Work.SAMPLE));
	}

	@Test
	void remediesStandInThisSeasonAndTheNextAndNoneIsOver() {
		FollowUp.Planned plan = plan(cause("bacterial-scorch"), FOUND, Set.of());
		assertThat(plan.tasks()).filteredOn((task) -> task.key().equals("send-leaves"))
			.extracting((task) -> task.window().from() + " " + task.window().to() + " " + task.season())
			// 70 to 5 days before the first freeze, of which the first days are over.
			.containsExactly("2026-08-10 2026-10-05 2026", "2027-08-01 2027-10-05 2027");
		assertThat(plan.tasks()).allSatisfy((task) -> {
			assertThat(task.window().to()).isAfterOrEqualTo(FOUND);
			assertThat(task.text().why()).contains("It is suspected, not confirmed");
		});
		assertThat(plan.undated()).isEmpty();
	}

	@Test
	void aYearOnItIsLookedAtAgain() {
		AddedTask again = plan(cause("bacterial-scorch"), FOUND, Set.of()).tasks()
			.stream()
			.filter((task) -> task.key().equals(FollowUp.LOOK_AGAIN))
			.findFirst()
			.orElseThrow();
		assertThat(again.kind()).isEqualTo(TaskKind.WATCH);
		assertThat(again.work()).isEqualTo(Work.SCOUT);
		assertThat(again.window().from()).isEqualTo("2027-07-13");
		assertThat(again.window().to()).isEqualTo("2027-08-10");
		// Found out half a year later: the summer after.
		assertThat(plan(cause("bacterial-scorch"), LocalDate.of(2027, 6, 30), Set.of()).tasks())
			.filteredOn((task) -> task.key().equals(FollowUp.LOOK_AGAIN))
			.extracting((task) -> task.window().from().getYear())
			.containsExactly(2028);
	}

	@Test
	void whatARuleAsksForAlreadyIsNotAskedTwice() {
		String rule = "tree-health/leaf-scorch-sample";
		FollowUp.Planned plan = plan(cause("bacterial-scorch"), FOUND, Set.of(rule + "|2026"));
		assertThat(plan.tasks()).filteredOn((task) -> task.key().equals("send-leaves"))
			.extracting(AddedTask::season)
			.containsExactly(2027);
		assertThat(plan.onCalendar()).containsExactly("Send leaves to a laboratory");
	}

	@Test
	void withoutAStationWhatHangsOnFreezesHasNoDays() {
		FollowUp.Planned plan = FollowUp.of(cause("bacterial-scorch"),
				new FollowUp.Facts(FOUND, SEEN, Hemisphere.NORTH, Map.of(), Set.of(), (rule) -> null));
		assertThat(plan.undated()).contains("Send leaves to a laboratory", "Water in drought");
		assertThat(plan.tasks()).extracting(AddedTask::key).containsExactly(FollowUp.LOOK_AGAIN);
	}

	/** Checks itself: a title too long, a key twice in a season would throw. */
	@Test
	void everyCauseOfTheKeyHasAFollowUpThatTheCalendarTakes() {
		for (Cause cause : ConfiguredKey.get().causes()) {
			for (int month = 1; month <= 12; month++) {
				LocalDate found = LocalDate.of(2026, month, 15);
				FollowUp.Planned plan = plan(cause, found, Set.of());
				Set<String> keys = new HashSet<>();
				plan.tasks()
					.forEach((task) -> assertThat(keys.add(task.key() + "|" + task.season()))
						.as(cause.id() + " " + task.key() + " found " + found)
						.isTrue());
				assertThat(plan.tasks()).hasSizeLessThan(20);
			}
		}
	}

	/** A pesticide is never recommended, whatever the key says. */
	@Test
	void noRemedyNamesASpray() {
		assertThat(ConfiguredKey.get().causes())
			.allSatisfy((cause) -> assertThat(cause.remedies()).allSatisfy((remedy) -> assertThat(
					(remedy.title() + " " + remedy.text()).toLowerCase(java.util.Locale.ROOT))
				.doesNotContainPattern(
						"\\b(fungicide|insecticide|miticide|imidacloprid|propiconazole|chlorothalonil|oxytetracycline|copper spray|neem|horticultural oil)\\b")));
	}

	/** Read from the titles as they are; common practice, no source. */
	@Test
	void theWorkOfARemedyFollowsItsTitle() {
		assertThat(List.of("Water in drought", "Send twigs to a laboratory", "Prune dead branches",
				"Rake up fallen leaves and twigs", "Lay a ring of mulch", "Have soil and leaves tested",
				"Wash the salt down before buds break", "Tap again", "Put a screen up before freeze-up",
				"Feed potassium as the test says, in spring", "Look again in a cool wet spring"))
			.extracting((title) -> RemedyWork
				.of(new Remedy("x", title, "x", false, new Span(Span.Anchor.FINDING, 0, 1), null, null)))
			.containsExactly(Work.WATER, Work.SAMPLE, Work.PRUNE, Work.CLEAN_UP, Work.MULCH, Work.SOIL, Work.LEACH,
					Work.SCOUT, Work.SHELTER, Work.FEED, Work.SCOUT);
	}

}
