package org.leafward.climate.source;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.LoadReport;

/**
 * A service outside that is asked about stations, again and again. Only stations that the
 * operator configured are ever asked about.
 */
public interface WeatherSource {

	/**
	 * The name under which its state is kept; never changed.
	 * @return lower case
	 */
	String name();

	/**
	 * Whether it gives observations.
	 * @return false for forecasts
	 */
	boolean observed();

	/**
	 * How long an answer is good for.
	 * @return time from a success to the next try
	 */
	Duration every();

	/**
	 * The stations it is asked about.
	 * @return identifiers as configured, checked only when they are used
	 */
	List<String> stations();

	/**
	 * Asks about a station and stores what comes. What was stored before stays unless the
	 * whole answer can be used.
	 * @param station identifier as configured
	 * @param progress how far it has come, and how long it may take
	 * @return what came of it
	 * @throws FetchFailed when the service doesn't answer usefully
	 * @throws org.leafward.measure.BadInput when the configuration or the answer is wrong
	 * @throws org.leafward.measure.NotThere when the station isn't registered
	 */
	Fetched fetch(String station, Progress progress);

	/**
	 * What came of asking.
	 *
	 * @param complete false when time ran out and the rest is to be fetched soon
	 * @param report what was loaded, for observations
	 */
	record Fetched(boolean complete, @Nullable LoadReport report) {
	}

	/** How far fetching has come, kept over restarts. */
	interface Progress {

		/**
		 * The day up to which the record has been read.
		 * @return null when nothing has
		 */
		@Nullable LocalDate reached();

		/**
		 * Notes a day up to which the record has been read and stored.
		 * @param day the day
		 */
		void reached(LocalDate day);

		/**
		 * Whether it is time to stop.
		 * @return true when the rest has to wait for the next time
		 */
		boolean outOfTime();

	}

}
