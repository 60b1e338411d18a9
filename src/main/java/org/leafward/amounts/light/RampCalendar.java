package org.leafward.amounts.light;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.leafward.amounts.Amount;
import org.leafward.measure.DayWords;
import org.leafward.measure.Explanation;

/**
 * A ramp on the days of the calendar, with those on which the plant stays in.
 *
 * @param ramp the ramp
 * @param complete whether its last step is reached; otherwise it is best begun anew
 * @param entries a day each, in order, held ones included
 */
public record RampCalendar(HardeningRamp ramp, boolean complete, List<Entry> entries) {

	public RampCalendar {
		entries = List.copyOf(entries);
	}

	/**
	 * A day.
	 *
	 * @param number of the day, from 1; it stays whatever is held
	 * @param date the day
	 * @param past whether it is over
	 * @param step what its step would have the plant do
	 * @param held whether the plant stays in instead
	 */
	public record Entry(int number, LocalDate date, RampDay step, boolean held) {

		/**
		 * What to do.
		 * @return for example "It stays in. Step 3 waits"
		 */
		public String words() {
			return this.held ? "It stays in. Step " + this.step.step() + " waits" : this.step.words();
		}

		/**
		 * The same with how it came about.
		 * @return an amount for a task
		 */
		public Amount amount() {
			return this.held ? new Amount(words(),
					Explanation.of("Held on " + DayWords.of(this.date), words())
						.withDetail("The step is taken on the next day that allows it, and the rest moves. After more "
								+ "than three held days in a row the plant goes back one step.")
						.withSource(RampLimits.SOURCE))
					: this.step.amount();
		}

		/**
		 * Light to aim at; what the plant has now on a day inside.
		 * @return mol/m² a day
		 */
		public double moles() {
			return this.held ? Math.min(this.step.basis().presentMoles(), this.step.siteMoles())
					: this.step.targetMoles();
		}

	}

	/**
	 * Lays a ramp on the calendar.
	 * @param ramp the ramp
	 * @param past what is known of its first days, in order
	 * @return the days
	 */
	public static RampCalendar of(HardeningRamp ramp, List<RampProgress.Log> past) {
		RampProgress progress = RampProgress.of(ramp.basis().steps(), past, Map.of());
		return new RampCalendar(ramp, progress.complete(), progress.turns().stream().map((turn) -> {
			LocalDate date = date(ramp, turn.number());
			return new Entry(turn.number(), date, ramp.on(date, turn.step()), turn.held());
		}).toList());
	}

	private static LocalDate date(HardeningRamp ramp, int number) {
		return ramp.firstDay().plusDays(number - 1L);
	}

	/**
	 * The day after its last.
	 * @return when the plant can be set out, if the ramp is complete
	 */
	public LocalDate ready() {
		return date(this.ramp, this.entries.size() + 1);
	}

}
