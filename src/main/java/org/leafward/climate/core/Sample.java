package org.leafward.climate.core;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.leafward.measure.SeasonDay;

/**
 * What a period of seasons says about one event: the values of the seasons that had it,
 * and how many didn't or could not be told.
 * <p>
 * Probabilities are conditional on seasons with the event and undefined when it comes in
 * fewer than one season in ten: both as in NCEI's freeze normals (Arguez 2012,
 * Supplemental Normals, reprinted in Normals Calculation Methodology 2020, appendix I).
 */
public final class Sample {

	/** Fewest seasons that must be told. */
	public static final int FEWEST_SEASONS = 10;

	private final double[] sorted;

	private final int without;

	private final int leftOut;

	/**
	 * Takes values.
	 * @param values any order
	 * @param without seasons without the event
	 * @param leftOut seasons that can't be told
	 */
	public Sample(double[] values, int without, int leftOut) {
		this.sorted = values.clone();
		Arrays.sort(this.sorted);
		this.without = without;
		this.leftOut = leftOut;
	}

	/**
	 * Takes the dates of seasons as day numbers.
	 * @param outcomes one for each season
	 * @return the sample, in days as {@link SeasonDay} counts them
	 */
	public static Sample ofDates(List<SeasonOutcome> outcomes) {
		double[] days = outcomes.stream()
			.filter((outcome) -> outcome.date() != null)
			.mapToDouble((outcome) -> SeasonDay.of(outcome.date(), outcome.season()))
			.toArray();
		return new Sample(days, count(outcomes, SeasonOutcome.State.WITHOUT),
				count(outcomes, SeasonOutcome.State.LEFT_OUT));
	}

	private static int count(List<SeasonOutcome> outcomes, SeasonOutcome.State state) {
		return (int) outcomes.stream().filter((outcome) -> outcome.state() == state).count();
	}

	public int used() {
		return this.sorted.length;
	}

	public int without() {
		return this.without;
	}

	public int leftOut() {
		return this.leftOut;
	}

	/**
	 * Why no probability can be given.
	 * @return a half sentence, or empty when all is well
	 */
	public Optional<String> undefined() {
		int told = used() + this.without;
		if (told < FEWEST_SEASONS) {
			return Optional.of("only %d seasons can be told, fewer than %d".formatted(told, FEWEST_SEASONS));
		}
		if (used() * 10 < told) {
			return Optional.of("it came in %d of %d seasons, fewer than one in ten".formatted(used(), told));
		}
		return Optional.empty();
	}

	/**
	 * The share of seasons with the event.
	 * @return 0 to 1; empty when fewer than ten seasons can be told
	 */
	public OptionalDouble share() {
		int told = used() + this.without;
		return (told < FEWEST_SEASONS) ? OptionalDouble.empty() : OptionalDouble.of((double) used() / told);
	}

	/**
	 * The empirical quantile, {@link Quantiles#type7}.
	 * @param percent 0 to 100, the part of the seasons that lies below
	 * @return in the unit of the values
	 * @throws IllegalStateException when {@link #undefined} says why
	 */
	public double quantile(int percent) {
		undefined().ifPresent((reason) -> {
			throw new IllegalStateException(reason);
		});
		return Quantiles.type7(this.sorted, percent / 100.0);
	}

}
