package org.leafward.amounts.light;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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
	 * @param step what its step would have the plant do, with the night inside when the
	 * night is known to be too cold
	 * @param held whether the plant stays in instead
	 * @param hold why, null when it isn't held or only the log says so
	 */
	public record Entry(int number, LocalDate date, boolean past, RampDay step, boolean held, @Nullable Hold hold) {

		/**
		 * What to do.
		 * @return for example "It stays in. The day stays at 5 °C (41 °F), below 7 °C (45
		 * °F). Step 3 waits"
		 */
		public String words() {
			return this.held ? "It stays in. " + ((this.hold != null) ? this.hold.reason() + ". " : "") + "Step "
					+ this.step.step() + " waits" : this.step.words();
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
	 * @param past what is known of its first days, in order; today is the day after the
	 * last
	 * @param weather what is known of its days, past ones and those to come; a day that
	 * was logged as done is done whatever the weather
	 * @return the days
	 */
	public static RampCalendar of(HardeningRamp ramp, List<RampProgress.Log> past,
			Map<LocalDate, RampWeather> weather) {
		Map<Integer, Hold> holds = new HashMap<>();
		int steps = ramp.basis().steps();
		for (int number = 1; number <= 2 * steps; number++) {
			int day = number;
			ramp.basis()
				.limits()
				.hold(weather.getOrDefault(date(ramp, number), RampWeather.UNKNOWN))
				.ifPresent((hold) -> holds.put(day, hold));
		}
		return of(ramp, RampProgress.of(steps, past, holds), weather);
	}

	/**
	 * Lays a ramp on the calendar whose held days are known.
	 * @param ramp the ramp
	 * @param progress its days
	 * @param weather for the nights; may be empty
	 * @return the days
	 */
	public static RampCalendar of(HardeningRamp ramp, RampProgress progress, Map<LocalDate, RampWeather> weather) {
		List<Entry> entries = new ArrayList<>();
		for (RampProgress.Turn turn : progress.turns()) {
			LocalDate date = date(ramp, turn.number());
			RampDay step = ramp.on(date, turn.step());
			RampWeather known = weather.getOrDefault(date, RampWeather.UNKNOWN);
			entries.add(new Entry(turn.number(), date, turn.past(),
					ramp.basis().limits().keepsNight(known.minimumCelsius()) ? step : step.nightIn(), turn.held(),
					turn.hold()));
		}
		return new RampCalendar(ramp, progress.complete(), entries);
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
