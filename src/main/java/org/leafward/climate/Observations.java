package org.leafward.climate;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.core.DailyRecord;
import org.leafward.climate.core.Element;
import org.leafward.climate.core.RecordOverlay;
import org.leafward.climate.source.ghcn.GhcnFile;
import org.leafward.climate.source.ghcn.GhcnReader;
import org.leafward.climate.store.ObservationTable;
import org.leafward.climate.store.StationTable;
import org.leafward.measure.BadInput;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.NotThere;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Takes daily records in. Values given replace stored ones; what isn't given stays.
 * Loading the same twice changes nothing the second time, and only a change is announced
 * by {@link ObservationsLoaded}.
 */
@Service
public class Observations {

	private final GhcnReader reader = new GhcnReader();

	private final StationTable stations;

	private final ObservationTable observations;

	private final ApplicationEventPublisher events;

	private final TransactionTemplate transaction;

	Observations(StationTable stations, ObservationTable observations, ApplicationEventPublisher events,
			TransactionTemplate transaction) {
		this.stations = stations;
		this.observations = observations;
		this.events = events;
		this.transaction = transaction;
	}

	/**
	 * Loads a GHCN-Daily file, fixed-width or by-station CSV, plain or gzip.
	 * @param station whose file it is; must be registered
	 * @param file the bytes, at most 200 MB unpacked; not closed
	 * @param name what the file is called, for messages
	 * @return what came of it
	 * @throws NotThere when the station isn't registered
	 * @throws BadInput when nothing in the file can be used
	 * @throws IOException when the stream breaks; nothing is stored then
	 */
	public LoadReport load(StationId station, InputStream file, String name) throws IOException {
		if (this.stations.find(station).isEmpty()) {
			throw notThere(station);
		}
		return store(station, this.reader.read(file, station, name));
	}

	/**
	 * Loads days that are given one by one, for example made up ones.
	 * @param station whose days; must be registered
	 * @param days in any order
	 * @return what came of it
	 * @throws NotThere when the station isn't registered
	 * @throws BadInput when a value or a year is out of bounds
	 */
	public LoadReport load(StationId station, List<ObservedDay> days) {
		DailyRecord.Builder builder = DailyRecord.builder();
		long kept = 0;
		for (ObservedDay day : days) {
			try {
				kept += set(builder, Element.TMIN, day, day.minimum()) + set(builder, Element.TMAX, day, day.maximum())
						+ set(builder, Element.PRCP, day, day.precipitation())
						+ set(builder, Element.SNWD, day, day.snowDepth())
						+ set(builder, Element.AWND, day, day.wind());
			}
			catch (IllegalArgumentException ex) {
				throw new BadInput(String.valueOf(ex.getMessage()), String.valueOf(day.day()),
						"correct or leave out the value");
			}
		}
		return store(station, new GhcnFile(builder.build(), days.size(), kept, 0, 0, List.of(), 0));
	}

	/**
	 * First day of a station's record.
	 * @param station whose record
	 * @return empty when there is none
	 */
	public Optional<LocalDate> firstDay(StationId station) {
		return this.observations.firstDay(station);
	}

	/**
	 * Last day of a station's record.
	 * @param station whose record
	 * @return empty when there is none
	 */
	public Optional<LocalDate> lastDay(StationId station) {
		return this.observations.lastDay(station);
	}

	private static int set(DailyRecord.Builder builder, Element element, ObservedDay day, @Nullable Integer value) {
		if (value == null) {
			return 0;
		}
		builder.set(element, day.day(), value);
		return 1;
	}

	private LoadReport store(StationId id, GhcnFile file) {
		RecordOverlay merge = this.transaction.execute((status) -> {
			Station station = this.stations.lock(id).orElseThrow(() -> notThere(id)).station();
			RecordOverlay done = this.observations.merge(id, file.record());
			if (done.firstDay().isPresent() && done.lastDay().isPresent()) {
				this.stations.recordChanged(id);
				GeoPoint point = station.point();
				this.events.publishEvent(new ObservationsLoaded(id.value(), point.latitude(), point.longitude(),
						done.firstDay().get(), done.lastDay().get()));
			}
			return done;
		});
		return new LoadReport(id.value(), file.lines(), file.kept(), file.flagged(), file.missing(), file.problems(),
				file.problemsInAll(), merge.inserted(), merge.changed(), file.record().firstDay().orElse(null),
				file.record().lastDay().orElse(null));
	}

	private static NotThere notThere(StationId station) {
		return new NotThere("There is no station " + station.value());
	}

}
