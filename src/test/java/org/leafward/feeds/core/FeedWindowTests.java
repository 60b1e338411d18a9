package org.leafward.feeds.core;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leafward.care.TaskState;

import static org.assertj.core.api.Assertions.assertThat;
import static org.leafward.feeds.core.CareTaskFixture.ENTRIES;
import static org.leafward.feeds.core.CareTaskFixture.CHANGED;
import static org.leafward.feeds.core.CareTaskFixture.aTask;

class FeedWindowTests {

	private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

	/** 2026-07-01 less 180 days is 2026-01-02, plus 400 days 2027-08-05. */
	@ParameterizedTest
	@CsvSource({ "2025-12-01,2026-01-01,false", "2025-12-01,2026-01-02,true", "2026-07-01,2026-07-01,true",
			"2027-08-05,2027-09-01,true", "2027-08-06,2027-08-06,false" })
	void showsTheRecentPastAndAYearAhead(String from, String to, boolean kept) {
		assertThat(new FeedWindow(DAY, 180, 400).keeps(aTask().on(from, to).build())).isEqualTo(kept);
	}

	/** Withdrawn on 2026-03-04. */
	@ParameterizedTest
	@CsvSource({ "2026-03-04,true", "2026-04-03,true", "2026-04-04,false" })
	void forgetsWhatWasWithdrawnAfterThirtyDays(LocalDate day, boolean kept) {
		assertThat(new FeedWindow(day, 180, 400).keeps(aTask().withdrawn("rain", CHANGED).build())).isEqualTo(kept);
		assertThat(new FeedWindow(day, 180, 400).keeps(aTask().build())).isTrue();
	}

	/** Changed on 2026-03-04, days until 2026-04-09. */
	@ParameterizedTest
	@EnumSource(names = { "DONE", "SKIPPED" })
	void keepsWhatWasDoneOrLeftOutAsLongAsWhatIsPlanned(TaskState state) {
		assertThat(new FeedWindow(LocalDate.of(2026, 10, 6), 180, 400).keeps(aTask().in(state, null).build())).isTrue();
		assertThat(new FeedWindow(LocalDate.of(2026, 10, 7), 180, 400).keeps(aTask().in(state, null).build()))
			.isFalse();
	}

	@Test
	void leavesOutTheFarthestFutureFirst() {
		List<FeedEntry> entries = IntStream.rangeClosed(1, 9)
			.mapToObj((i) -> aTask().numbered(i).on("2026-0" + (10 - i) + "-01", "2026-12-31").build())
			.map((task) -> ENTRIES.of(task))
			.toList();
		assertThat(FeedWindow.fitting(entries, (entry) -> 10, 90)).isSameAs(entries);
		assertThat(FeedWindow.fitting(entries, (entry) -> 10, 89)).isEqualTo(entries.subList(1, 9));
		assertThat(FeedWindow.fitting(entries, (entry) -> 10, 30)).isEqualTo(entries.subList(6, 9));
		assertThat(FeedWindow.fitting(entries, (entry) -> 10, 0)).isEmpty();
	}

}
