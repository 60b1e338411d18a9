package org.leafward.lookalikes.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.leafward.measure.DayWindow;

/**
 * When a remedy is done, in days counted from something.
 *
 * @param anchor what the days are counted from
 * @param from first day, may be negative
 * @param to last day, not before {@code from}
 */
public record Span(Anchor anchor, int from, int to) {

	/** What days are counted from. */
	public enum Anchor {

		/** The day on which the finding is made; once. */
		FINDING("finding"),

		/** The median last freeze of spring (32 °F) at the place; each season. */
		LAST_SPRING_FREEZE("last-spring-freeze"),

		/** The median first freeze of fall (32 °F) at the place; each season. */
		FIRST_FALL_FREEZE("first-fall-freeze");

		private final String code;

		Anchor(String code) {
			this.code = code;
		}

		/**
		 * The word used in config/lookalikes.
		 * @return lower case with hyphens
		 */
		public String code() {
			return this.code;
		}

	}

	/**
	 * The median freezes of one season at the place.
	 *
	 * @param lastOfSpring median last freeze of spring
	 * @param firstOfFall median first freeze of fall
	 */
	public record Freezes(LocalDate lastOfSpring, LocalDate firstOfFall) {
	}

	public Span {
		if (to < from) {
			throw new IllegalArgumentException("span ends %d days off, before it begins at %d".formatted(to, from));
		}
	}

	/**
	 * The windows that are not over on the day of the finding.
	 * @param found the day of the finding at the place
	 * @param seasons the freezes of this season and the next ones, in order
	 * @return for {@link Anchor#FINDING} one; otherwise one for each season that isn't
	 * over, begun ones cut to begin with the day of the finding
	 */
	public List<DayWindow> windows(LocalDate found, List<Freezes> seasons) {
		if (this.anchor == Anchor.FINDING) {
			return List.of(window(found));
		}
		List<DayWindow> windows = new ArrayList<>();
		for (Freezes season : seasons) {
			DayWindow whole = window(
					(this.anchor == Anchor.LAST_SPRING_FREEZE) ? season.lastOfSpring() : season.firstOfFall());
			if (!whole.to().isBefore(found)) {
				windows.add(new DayWindow(whole.from().isBefore(found) ? found : whole.from(), whole.to()));
			}
		}
		return List.copyOf(windows);
	}

	private DayWindow window(LocalDate day) {
		return new DayWindow(day.plusDays(this.from), day.plusDays(this.to));
	}

}
