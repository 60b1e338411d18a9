package org.leafward.climate.core;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.SeasonDay;

/**
 * The markers of a site, blended from its neighbours and remembered. The same stations
 * and records give the same markers, down to the explanation.
 */
public final class BlendedPlace implements PlaceMarkers {

	/** A bound for the memory that odd keys could eat. */
	private static final int MOST_REMEMBERED = 2_000;

	private final Hemisphere hemisphere;

	private final List<Neighbour> neighbours;

	private final Map<MarkerKey, Blend> blends = new ConcurrentHashMap<>();

	private final Map<Dated, SeasonMarker> markers = new ConcurrentHashMap<>();

	private volatile @Nullable BlendExplanation words;

	/**
	 * Makes the markers of a site.
	 * @param hemisphere where the site lies
	 * @param neighbours its stations, from {@link Neighbour#choose}
	 */
	public BlendedPlace(Hemisphere hemisphere, List<Neighbour> neighbours) {
		this.hemisphere = hemisphere;
		this.neighbours = List.copyOf(neighbours);
	}

	@Override
	public Optional<SeasonMarker> on(MarkerKey key, int season) {
		Dated dated = new Dated(key, season);
		SeasonMarker known = this.markers.get(dated);
		if (known != null) {
			return Optional.of(known);
		}
		Blend blend = blend(key);
		if (blend.parts().isEmpty()) {
			return Optional.empty();
		}
		SeasonMarker marker = marker(key, season, blend);
		if (this.markers.size() < MOST_REMEMBERED) {
			this.markers.put(dated, marker);
		}
		return Optional.of(marker);
	}

	private SeasonMarker marker(MarkerKey key, int season, Blend blend) {
		LocalDate date = SeasonDay.toDate(blend.day(), season);
		return new SeasonMarker(key, season, date, SeasonDay.toDate(blend.earliest(), season),
				SeasonDay.toDate(blend.latest(), season), () -> words().of(key, season, blend, date));
	}

	/** Two threads may both write them, to the same effect. */
	private BlendExplanation words() {
		BlendExplanation known = this.words;
		if (known == null) {
			known = new BlendExplanation(this.neighbours);
			this.words = known;
		}
		return known;
	}

	private Blend blend(MarkerKey key) {
		Blend known = this.blends.get(key);
		if (known != null) {
			return known;
		}
		Blend blend = Blend.of(key, this.neighbours, this.hemisphere);
		if (this.blends.size() < MOST_REMEMBERED) {
			this.blends.put(key, blend);
		}
		return blend;
	}

	@Override
	public String whyMissing(MarkerKey key) {
		if (this.neighbours.isEmpty()) {
			return ("No weather station with a record of %d seasons or more is known within %.0f km, and a date is never "
					+ "guessed. Check the position of the site, or ask whoever runs this server to load the daily "
					+ "record of a nearer station.")
				.formatted(Sample.FEWEST_SEASONS, Neighbour.FARTHEST);
		}
		Blend blend = blend(key);
		if (!blend.parts().isEmpty()) {
			return MarkerWords.title(key) + " has a date here.";
		}
		return MarkerWords.title(key) + " has no date here: " + words().silence(blend);
	}

	@Override
	public OptionalDouble yearsWithFreeze(TemperatureThreshold threshold) {
		double sum = 0;
		double weights = 0;
		for (Neighbour neighbour : this.neighbours) {
			OptionalDouble share = neighbour.yearsWithFreeze(threshold, this.hemisphere);
			if (share.isPresent()) {
				sum += neighbour.weight() * share.getAsDouble();
				weights += neighbour.weight();
			}
		}
		return (weights > 0) ? OptionalDouble.of(sum / weights) : OptionalDouble.empty();
	}

	private record Dated(MarkerKey key, int season) {
	}

}
