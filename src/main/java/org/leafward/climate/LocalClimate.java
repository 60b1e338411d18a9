package org.leafward.climate;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.BlendedPlace;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.DaylitPlace;
import org.leafward.climate.core.FreezeTable;
import org.leafward.climate.core.Neighbour;
import org.leafward.climate.core.SeasonPeriod;
import org.leafward.climate.core.StationClimate;
import org.leafward.climate.core.place.ComparedMinima;
import org.leafward.climate.core.place.PlaceFreezes;
import org.leafward.climate.store.ObservationTable;
import org.leafward.climate.store.StationTable;
import org.leafward.climate.store.StoredStation;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Service;

/**
 * What the stations say about a place.
 * <p>
 * Statistics are kept in memory, and records as far as there is room. Each question reads
 * the version of the records concerned from the database, so all nodes answer alike as
 * soon as one has loaded observations, and keeps to these versions ({@link OneVersion}).
 */
@Service
public class LocalClimate {

	/** A station speaks for places up to this far away, km. */
	public static final double STATION_RADIUS_KILOMETRES = Neighbour.FARTHEST;

	/** Part of the heap that statistics may take, and daily records once more. */
	private static final int PART_OF_HEAP = 4;

	/**
	 * Statistics take no more than this, bytes: those of ten thousand stations among
	 * hills. Places far above and below their stations widen what is kept of each, and
	 * would go on to.
	 */
	private static final long MOST_STATISTICS = 200_000_000;

	private static final int USES_BETWEEN_TRIMS = 1_000;

	private final Stations stations;

	private final StationTable stationTable;

	private final RecordCache records;

	private final long mostBytes;

	private final Map<StationId, Held> held = new ConcurrentHashMap<>();

	private final AtomicLong uses = new AtomicLong();

	LocalClimate(Stations stations, StationTable stationTable, ObservationTable observations) {
		this.stations = stations;
		this.stationTable = stationTable;
		long part = Runtime.getRuntime().maxMemory() / PART_OF_HEAP;
		this.mostBytes = Math.min(part, MOST_STATISTICS);
		this.records = new RecordCache(part, observations::read);
	}

	/**
	 * The season markers of open, level ground, from up to three stations within 150 km.
	 * @param point the place with its height
	 * @return markers of the records as they are now; safe for use by threads
	 */
	public PlaceMarkers markersAt(GeoPoint point) {
		return markersAt(Place.of(point));
	}

	/**
	 * The season markers of a place. Its microclimate counts in freezes and nights, by
	 * half in sums of heat; soil, ground and days follow the height alone.
	 * @param place the place
	 * @return as {@link #markersAt(GeoPoint)}, over the latest 30 seasons; a marker that
	 * needs a record throws {@link RecordMovedOn} when that has changed by then, so ask
	 * for several through {@link #answer}
	 */
	public PlaceMarkers markersAt(Place place) {
		return markersAt(place, NormalsPeriod.LATEST_30);
	}

	/**
	 * An answer drawn from the season markers of a place, all from one version of each
	 * record, even when observations come in meanwhile.
	 * @param place the place
	 * @param question what is made of the markers; may be asked again from the start, so
	 * it leaves nothing behind
	 * @param <T> what the answer is
	 * @return the answer
	 * @throws RecordMovedOn when records change faster than the question is answered
	 */
	public <T> T answer(Place place, Function<PlaceMarkers, T> question) {
		return OneVersion.of(() -> question.apply(markersAt(place)));
	}

	/**
	 * As {@link #answer(Place, Function)}, with stations that were read before.
	 * @param place the place
	 * @param surroundings the stations around it
	 * @param question what is made of the markers; may be asked again from the start
	 * @param <T> what the answer is
	 * @return the answer
	 * @throws RecordMovedOn when records change faster than the question is answered
	 */
	public <T> T answer(Place place, Surroundings surroundings, Function<PlaceMarkers, T> question) {
		StationsAround around = surroundings.stations();
		return OneVersion.of(around,
				() -> question.apply(markersAt(place, NormalsPeriod.LATEST_30, near(around, place.point()))));
	}

	/**
	 * The season markers of a place over a period.
	 * @param place the place
	 * @param period which seasons
	 * @return as {@link #markersAt(Place)}
	 */
	public PlaceMarkers markersAt(Place place, NormalsPeriod period) {
		return OneVersion.of(() -> markersAt(place, period, near(this.stations::around, place.point())));
	}

	private static PlaceMarkers markersAt(Place place, NormalsPeriod period, Near near) {
		return new DaylitPlace(place.point(), new BlendedPlace(place.point().hemisphere(),
				Neighbour.choose(place, period, near.stations(), near::open, Neighbour.MOST)));
	}

	/**
	 * The freezes of a place, with stations, spread, error and periods compared.
	 * @param place the place
	 * @param threshold what counts as a freeze
	 * @param period which seasons
	 * @return the climatology; curves without points say why
	 */
	public FreezeClimatology freezeClimatology(Place place, TemperatureThreshold threshold, NormalsPeriod period) {
		return OneVersion.of(() -> {
			Near near = near(this.stations::around, place.point());
			return PlaceFreezes.of(place, threshold, period, near.stations(), near::open);
		});
	}

	/**
	 * Lays readings of somebody's own minimum thermometer beside the estimate for open,
	 * level ground there, from the stations that the season markers come from.
	 * @param point the place with its height
	 * @param readings one for each day
	 * @return the comparison; nights that no station has are not counted
	 */
	public MinimumComparison compare(GeoPoint point, List<MinimumReading> readings) {
		return OneVersion.of(() -> {
			Near near = near(this.stations::around, point);
			return ComparedMinima.of(readings, Neighbour.choose(point, near.stations(), near::open));
		});
	}

	private Near near(StationsAround around, GeoPoint point) {
		return new Near(around.of(point)
			.stream()
			.filter((stored) -> stored.recordVersion() > 0)
			.collect(Collectors.toMap((stored) -> stored.station().id(), (stored) -> stored)));
	}

	/**
	 * The freezes of a station, at its own height.
	 * @param id which station
	 * @param from year of the first season, or null for the latest 30 seasons
	 * @param to year of the last season, or null for the latest 30 seasons
	 * @param threshold what counts as a freeze
	 * @return the table
	 * @throws NotThere when the station isn't registered
	 * @throws BadInput when the period is no period, or left open while the record covers
	 * no season
	 */
	public FreezeDates freezeDates(StationId id, @Nullable Integer from, @Nullable Integer to,
			TemperatureThreshold threshold) {
		return OneVersion.of(() -> {
			StationClimate climate = climate(
					this.stationTable.find(id).orElseThrow(() -> new NotThere("There is no station " + id.value())));
			return FreezeTable.of(climate, period(climate, from, to), threshold);
		});
	}

	private static SeasonPeriod period(StationClimate climate, @Nullable Integer from, @Nullable Integer to) {
		if (from == null && to == null) {
			return climate.period(climate.station().point().hemisphere())
				.orElseThrow(() -> new BadInput("the record of %s covers no season".formatted(climate.station().name()),
						"from", "load observations first"));
		}
		if (from == null || to == null) {
			throw new BadInput("only one end of the period is given", "from, to", "give both ends or none");
		}
		if (from < DailyRecord.FIRST_YEAR || to > DailyRecord.LAST_YEAR || from > to) {
			throw new BadInput("%d to %d is no period".formatted(from, to), "from, to",
					"give two years from %d to %d, the earlier one first".formatted(DailyRecord.FIRST_YEAR,
							DailyRecord.LAST_YEAR));
		}
		return new SeasonPeriod(from, to);
	}

	/** The statistics of a station, kept in memory. */
	StationClimate climate(StoredStation stored) {
		StationId id = stored.station().id();
		Held known = this.held.get(id);
		StationClimate climate = (known != null && known.stored.equals(stored)) ? known.climate
				: new StationClimate(stored.station(), () -> this.records.get(stored));
		long use = this.uses.incrementAndGet();
		this.held.put(id, new Held(stored, climate, use));
		if (use % USES_BETWEEN_TRIMS == 0) {
			trim();
		}
		return climate;
	}

	/** Lets those go that were not asked for longest, until the rest fits. */
	private void trim() {
		List<Map.Entry<StationId, Held>> latest = this.held.entrySet()
			.stream()
			.map((entry) -> Map.entry(entry.getKey(), entry.getValue()))
			.sorted(Comparator.comparingLong((entry) -> -entry.getValue().lastUse))
			.toList();
		long bytes = 0;
		for (Map.Entry<StationId, Held> entry : latest) {
			bytes += entry.getValue().climate.bytes();
			if (bytes > this.mostBytes) {
				this.held.remove(entry.getKey(), entry.getValue());
			}
		}
	}

	/** The stations around a point that have a record. */
	private final class Near {

		private final Map<StationId, StoredStation> stored;

		Near(Map<StationId, StoredStation> stored) {
			this.stored = stored;
		}

		List<Station> stations() {
			return this.stored.values().stream().map(StoredStation::station).toList();
		}

		Optional<StationClimate> open(Station station) {
			return Optional.ofNullable(this.stored.get(station.id())).map(LocalClimate.this::climate);
		}

	}

	private record Held(StoredStation stored, StationClimate climate, long lastUse) {
	}

}
