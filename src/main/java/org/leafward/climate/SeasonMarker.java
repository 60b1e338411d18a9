package org.leafward.climate;

import java.time.LocalDate;
import java.util.Objects;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.Explanation;

/**
 * A dated local event of one season at one place. Never changes; its explanation is put
 * into words when it is first asked for, which takes longer than the dates do.
 */
public final class SeasonMarker {

	private final MarkerKey key;

	private final int season;

	private final LocalDate date;

	private final LocalDate earliest;

	private final LocalDate latest;

	private final Supplier<Explanation> words;

	private volatile @Nullable Explanation explanation;

	/**
	 * Makes a marker whose explanation is there.
	 * @param key which event
	 * @param season year of the season
	 * @param date the date at the key's probability
	 * @param earliest the date that one year in ten undercuts
	 * @param latest the date that one year in ten exceeds
	 * @param explanation how the date came about, down to the stations
	 */
	public SeasonMarker(MarkerKey key, int season, LocalDate date, LocalDate earliest, LocalDate latest,
			Explanation explanation) {
		this(key, season, date, earliest, latest, () -> explanation);
	}

	/**
	 * Makes a marker whose explanation can be made.
	 * @param key which event
	 * @param season year of the season
	 * @param date the date at the key's probability
	 * @param earliest the date that one year in ten undercuts
	 * @param latest the date that one year in ten exceeds
	 * @param words makes the explanation, always the same
	 */
	public SeasonMarker(MarkerKey key, int season, LocalDate date, LocalDate earliest, LocalDate latest,
			Supplier<Explanation> words) {
		this.key = key;
		this.season = season;
		this.date = date;
		this.earliest = earliest;
		this.latest = latest;
		this.words = words;
	}

	public MarkerKey key() {
		return this.key;
	}

	public int season() {
		return this.season;
	}

	/**
	 * The date at the key's probability.
	 * @return the date
	 */
	public LocalDate date() {
		return this.date;
	}

	/**
	 * The date that one year in ten undercuts.
	 * @return the date
	 */
	public LocalDate earliest() {
		return this.earliest;
	}

	/**
	 * The date that one year in ten exceeds.
	 * @return the date
	 */
	public LocalDate latest() {
		return this.latest;
	}

	/**
	 * How the date came about, down to the stations.
	 * @return the explanation
	 */
	public Explanation explanation() {
		Explanation known = this.explanation;
		if (known == null) {
			known = this.words.get();
			this.explanation = known;
		}
		return known;
	}

	@Override
	public boolean equals(@Nullable Object other) {
		return other instanceof SeasonMarker that && this.key.equals(that.key) && this.season == that.season
				&& this.date.equals(that.date) && this.earliest.equals(that.earliest) && this.latest.equals(that.latest)
				&& explanation().equals(that.explanation());
	}

	@Override
	public int hashCode() {
		return Objects.hash(this.key, this.season, this.date, this.earliest, this.latest);
	}

	@Override
	public String toString() {
		return "%s of %d: %s (%s to %s)".formatted(this.key.code(), this.season, this.date, this.earliest, this.latest);
	}

}
