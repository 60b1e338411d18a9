package org.leafward.climate;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.GeoPoint;

/**
 * The stations and forecasts around some places, read with a few questions for all of
 * them. Good for as long as one transaction takes; not for use by several threads.
 */
public final class Surroundings {

	private final Function<GeoPoint, List<StoredStation>> read;

	private final Map<StationId, Forecasts.Fresh> forecasts;

	private final Map<GeoPoint, List<StoredStation>> stations;

	private final StationsAround around = new StationsAround() {

		@Override
		public List<StoredStation> of(GeoPoint point) {
			return Surroundings.this.stations.computeIfAbsent(point, Surroundings.this.read);
		}

		@Override
		public void renew() {
			Surroundings.this.stations.clear();
		}

	};

	/**
	 * Keeps what was read.
	 * @param stations by place
	 * @param forecasts those that can be leaned on, of all these stations
	 * @param read reads the stations of one place anew
	 */
	Surroundings(Map<GeoPoint, List<StoredStation>> stations, Map<StationId, Forecasts.Fresh> forecasts,
			Function<GeoPoint, List<StoredStation>> read) {
		this.stations = new HashMap<>(stations);
		this.forecasts = Map.copyOf(forecasts);
		this.read = read;
	}

	StationsAround stations() {
		return this.around;
	}

	/** The forecast of the nearest station that has one that isn't stale. */
	Optional<Forecasts.Fresh> forecast(GeoPoint point) {
		return this.around.of(point)
			.stream()
			.flatMap((stored) -> Optional.ofNullable(this.forecasts.get(stored.station().id())).stream())
			.findFirst();
	}

	/**
	 * When the forecast that counts for a place was made.
	 * @param point the place
	 * @return empty without one that can be leaned on
	 */
	public Optional<Instant> forecastMade(GeoPoint point) {
		return forecast(point).map(Forecasts.Fresh::issuedAt);
	}

	/**
	 * All that markers, weather and water of a place hang on, but for the day: stations,
	 * versions of their records, and the forecast. Versions only rise, so the same text
	 * means the same answers, even when a record moves on after it was made.
	 * @param point the place
	 * @return the same on every node
	 */
	public String fingerprint(GeoPoint point) {
		StringBuilder text = new StringBuilder();
		for (StoredStation stored : this.around.of(point)) {
			Station station = stored.station();
			text.append(station.id().value())
				.append(' ')
				.append(stored.recordVersion())
				.append(' ')
				.append(station.point())
				.append(station.invented())
				.append(station.name())
				.append('\n');
		}
		forecast(point)
			.ifPresent((forecast) -> text.append(forecast.station().id().value()).append(' ').append(forecast.days()));
		return text.toString();
	}

}
