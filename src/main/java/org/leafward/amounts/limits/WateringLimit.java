package org.leafward.amounts.limits;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * What a county allows.
 *
 * @param county its name, as sites are registered with it
 * @param days days of the week on which watering is allowed; empty for none at all
 * @param hours hours of these days; null for all day
 * @param concerns what the limit is for, for example "sprinklers; a hose held in the hand
 * is free"
 * @param source where it is written
 * @param address its web address; null without
 */
public record WateringLimit(String county, Set<DayOfWeek> days, @Nullable Hours hours, String concerns, String source,
		@Nullable String address) {

	public WateringLimit {
		days = Set.copyOf(days);
	}

	/**
	 * Hours of the clock; they may pass midnight.
	 *
	 * @param from when watering may begin
	 * @param to when it has to end
	 */
	public record Hours(LocalTime from, LocalTime to) {

		String words() {
			return this.from.isBefore(this.to) ? "from %s to %s".formatted(this.from, this.to)
					: "from %s to %s in the morning after".formatted(this.from, this.to);
		}

	}

	/**
	 * The first day of a window on which watering is allowed.
	 * @param window the days
	 * @return empty when there is none
	 */
	public Optional<LocalDate> firstIn(DayWindow window) {
		return window.from()
			.datesUntil(window.to().plusDays(1))
			.limit(7)
			.filter((day) -> this.days.contains(day.getDayOfWeek()))
			.findFirst();
	}

	/**
	 * The limit as a sentence.
	 * @return for example "Alder County allows it on Tuesday and Friday from 18:00 to
	 * 10:00 in the morning after (sprinklers)."
	 */
	public String words() {
		if (this.days.isEmpty()) {
			return "%s allows no watering now (%s).".formatted(this.county, this.concerns);
		}
		Hours clock = this.hours;
		return "%s allows it on %s%s (%s).".formatted(this.county, dayWords(),
				(clock != null) ? " " + clock.words() : "", this.concerns);
	}

	/**
	 * The limit as it falls in some days.
	 * @param window the days of a task
	 * @return the same, with a word where none of the days is allowed
	 */
	public String words(DayWindow window) {
		return words() + ((this.days.isEmpty() || firstIn(window).isPresent()) ? ""
				: " None of the days of this task is one of them.");
	}

	private String dayWords() {
		List<String> names = this.days.stream()
			.sorted()
			.map((day) -> day.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
			.toList();
		return (names.size() == 7) ? "every day"
				: (names.size() == 1) ? names.get(0)
						: names.stream().limit(names.size() - 1L).collect(Collectors.joining(", ")) + " and "
								+ names.get(names.size() - 1);
	}

	/**
	 * How the limit falls in some days.
	 * @param window the days of a task
	 * @return the limit with the first day that it leaves
	 */
	public Explanation explain(DayWindow window) {
		Explanation step = Explanation
			.of("Local limit",
					firstIn(window).map((day) -> "next allowed on " + DayWords.of(day))
						.orElse("not allowed on these days"))
			.withDetail(words() + " Ask your water supplier for what holds today.");
		return step.withSource((this.address != null) ? this.address : this.source);
	}

}
