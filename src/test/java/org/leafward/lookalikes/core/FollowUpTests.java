package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.leafward.care.AddedTask;
import org.leafward.care.RulePacks;
import org.leafward.care.TaskKind;
import org.leafward.care.core.rule.Work;
import org.leafward.care.pack.ConfiguredPacks;
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
		return FollowUp.of(cause, new FollowUp.Facts(found, SEEN, Hemisphere.NORTH, FREEZES, asked));
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
				new FollowUp.Facts(FOUND, SEEN, Hemisphere.NORTH, Map.of(), Set.of()));
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

	/**
	 * Where a care rule asks for the same, its work is the same, so that hold-offs agree.
	 */
	@Test
	void theWorkOfARemedyIsThatOfItsRule() {
		RulePacks packs = ConfiguredPacks.read();
		for (Cause cause : ConfiguredKey.get().causes()) {
			for (Remedy remedy : cause.remedies()) {
				String rule = remedy.rule();
				if (rule != null) {
					assertThat(remedy.work()).as(cause.id() + " " + remedy.id())
						.isEqualTo(packs.find(rule).orElseThrow().work());
				}
			}
		}
		assertThat(plan(cause("bacterial-scorch"), FOUND, Set.of()).tasks())
			.filteredOn((task) -> task.key().equals("take-out-deadwood"))
			.extracting(AddedTask::work)
			.containsOnly(Work.PRUNE)
			.hasSize(2);
	}

	/**
	 * Found in late summer, what hangs on a freeze of spring has its days next season
	 * only, and what hangs on one of fall in both; what follows at once stands once.
	 * Worked by hand from freezes on 1 May and 10 Oct.
	 */
	@Test
	void eachWindowIsThatOfItsSeason() {
		assertThat(days("winter-burn", LocalDate.of(2026, 4, 1))).containsExactlyInAnyOrder(
				"wait-with-cutting 2026-04-01 2026-05-21", "wait-with-cutting 2027-02-15 2027-05-21",
				"water-in-spring 2026-04-11 2026-06-15", "water-in-spring 2027-04-11 2027-06-15",
				"deep-water-in-fall 2026-09-25 2026-11-24", "deep-water-in-fall 2027-09-25 2027-11-24",
				"mulch-in-fall 2026-09-30 2026-11-19", "mulch-in-fall 2027-09-30 2027-11-19",
				"screen-before-winter 2026-10-25 2026-11-29", "screen-before-winter 2027-10-25 2027-11-29");
		assertThat(days("salt-spray", FOUND)).containsExactlyInAnyOrder("rinse 2027-02-20 2027-04-11",
				"wait-for-buds 2027-02-15 2027-05-21", "screen 2026-10-30 2026-11-29", "screen 2027-10-30 2027-11-29",
				"bearing-kinds 2026-09-10 2026-10-30", "bearing-kinds 2027-09-10 2027-10-30");
		assertThat(days("late-frost", LocalDate.of(2026, 5, 12))).containsExactlyInAnyOrder(
				"wait-for-flush 2026-05-12 2026-06-23", "water-lightly 2026-05-12 2026-06-23",
				"cover-next-time 2026-05-12 2026-05-16", "cover-next-time 2027-04-06 2027-05-16");
	}

	private static List<String> days(String cause, LocalDate found) {
		return plan(cause(cause), found, Set.of()).tasks()
			.stream()
			.filter((task) -> !task.key().equals(FollowUp.LOOK_AGAIN))
			.map((task) -> "%s %s %s".formatted(task.key(), task.window().from(), task.window().to()))
			.toList();
	}

	/**
	 * Saws, ladders, stakes, dust and ice: what can hurt says so. Common practice, no
	 * source.
	 */
	@Test
	void workThatCanHurtHasItsCaution() {
		for (Cause cause : ConfiguredKey.get().causes()) {
			for (Remedy remedy : cause.remedies()) {
				boolean hurts = !remedy.holdOff() && (remedy.work() == Work.PRUNE || remedy.work() == Work.SAFETY
						|| (remedy.title() + remedy.text())
							.matches("(?is).*\\b(saw|ladder|stakes|trench|sulfur|screen)\\b.*"));
				assertThat(!hurts || remedy.caution() != null).as(cause.id() + " " + remedy.id()).isTrue();
			}
		}
	}

}
