package org.leafward.lookalikes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareLog;
import org.leafward.care.CareTask;
import org.leafward.care.LogEntry;
import org.leafward.care.TaskCalendar;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.climate.Droughts;
import org.leafward.climate.Grounds;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.LocalWeather;
import org.leafward.climate.MarkerKey;
import org.leafward.climate.MarkerKind;
import org.leafward.climate.PlaceMarkers;
import org.leafward.climate.SeasonMarker;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.WeatherSeries;
import org.leafward.lookalikes.core.RecordEvidence;
import org.leafward.lookalikes.core.RecordFacts;
import org.leafward.lookalikes.core.RecordLine;
import org.leafward.lookalikes.core.Span;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.measure.GeoPoint;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.NotThere;
import org.leafward.measure.Season;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.plants.Tolerance;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SoilDrainage;
import org.leafward.register.SoilExtract;
import org.leafward.register.SoilTests;
import org.leafward.register.Wind;
import org.springframework.stereotype.Service;

/** Gathers what register, care log, catalogue and weather hold of a planting. */
@Service
class SiteRecords implements RecordReader {

	/** Weather so far back: the winter before a spring in which its injury shows. */
	private static final int WEATHER_DAYS = 210;

	private static final int LOG_MONTHS = 15;

	/** Entries of the log that are looked through. */
	private static final int PAGE = 200;

	private static final int PAGES = 5;

	private static final int HARDENING_DAYS = 30;

	private static final int SOIL_TEST_YEARS = 3;

	private final LookalikeKeys keys;

	private final Register register;

	private final SoilTests soilTests;

	private final Catalogue catalogue;

	private final CareLog log;

	private final TaskCalendar tasks;

	private final Weather weather;

	/** What is asked of the climate. */
	private record Weather(LocalWeather days, Grounds grounds, Droughts droughts, LocalClimate climate) {
	}

	SiteRecords(LookalikeKeys keys, Register register, SoilTests soilTests, Catalogue catalogue, CareLog log,
			TaskCalendar tasks, LocalWeather days, Grounds grounds, Droughts droughts, LocalClimate climate) {
		this.keys = keys;
		this.register = register;
		this.soilTests = soilTests;
		this.catalogue = catalogue;
		this.log = log;
		this.tasks = tasks;
		this.weather = new Weather(days, grounds, droughts, climate);
	}

	@Override
	public List<RecordLine> of(PlantingId id, LocalDate seen) {
		Planting planting = this.register.find(id).orElseThrow(() -> new NotThere("There is no planting " + id));
		Site site = this.register.require(planting.site());
		Optional<Species> species = this.catalogue.find(planting.species());
		GeoPoint point = site.point();
		boolean south = point.hemisphere() == Hemisphere.SOUTH;
		boolean indoors = planting.wintersIndoors() || planting.raised() != null;
		RecordFacts facts = new RecordFacts(seen, south, species.map(SiteRecords::plant).orElse(unknown()),
				new RecordFacts.Stand(planting.plantedOn(), planting.saltExposed(), indoors,
						site.wind() == Wind.EXPOSED),
				works(planting, seen), hardening(planting, seen), days(point, seen), drought(point, seen),
				soil(planting, seen), freezes(site, seen));
		return RecordEvidence.of(this.keys.current(), facts);
	}

	@Override
	public List<RecordLine> ofSpecies(String species) {
		return this.catalogue.find(new SpeciesId(species))
			.map((one) -> RecordEvidence.of(this.keys.current(),
					new RecordFacts(LocalDate.EPOCH, false, plant(one), null, List.of(), RecordFacts.Hardening.NONE,
							List.of(), null, null, null)))
			.orElse(List.of());
	}

	private static RecordFacts.Plant plant(Species species) {
		Tolerance tolerance = species.habits().tolerance();
		return new RecordFacts.Plant(species.botanicalName().replaceFirst("[ ×].*", ""), Set.copyOf(species.groups()),
				species.traits(), species.habits().troubles(), word(tolerance.soilSalt()), word(tolerance.saltSpray()));
	}

	private static RecordFacts.Plant unknown() {
		return new RecordFacts.Plant("", Set.of(), Set.of(), List.of(), null, null);
	}

	private static @Nullable String word(Tolerance.@Nullable Level level) {
		return (level != null) ? level.name().toLowerCase(Locale.ROOT) : null;
	}

	/**
	 * Of the planting and of the site as a whole: a bed is fed with all that stands in
	 * it.
	 */
	private List<RecordFacts.Work> works(Planting planting, LocalDate seen) {
		LocalDate since = seen.minusMonths(LOG_MONTHS);
		List<RecordFacts.Work> works = new ArrayList<>();
		for (int page = 0; page < PAGES; page++) {
			List<LogEntry> entries = this.log.latest(planting.site(), null, page, PAGE);
			for (LogEntry entry : entries) {
				if ((entry.planting() == null || entry.planting().equals(planting.id())) && !entry.day().isBefore(since)
						&& !entry.day().isAfter(seen)) {
					works.add(new RecordFacts.Work(entry.work().code(), entry.day(), entry.insideHoldOff() != null));
				}
			}
			if (entries.size() < PAGE || entries.get(entries.size() - 1).day().isBefore(since)) {
				break;
			}
		}
		return works;
	}

	private RecordFacts.Hardening hardening(Planting planting, LocalDate seen) {
		int done = 0;
		int left = 0;
		Set<LocalDate> days = new HashSet<>();
		for (CareTask task : this.tasks.ofSite(planting.site(),
				new DayWindow(seen.minusDays(HARDENING_DAYS), seen.minusDays(1)))) {
			if (task.kind() == TaskKind.RAMP_DAY && planting.id().equals(task.planting())
					&& task.window().to().isBefore(seen) && days.add(task.window().from())) {
				done += (task.state() == TaskState.DONE) ? 1 : 0;
				left += (task.state() == TaskState.SKIPPED || task.state() == TaskState.PLANNED) ? 1 : 0;
			}
		}
		return new RecordFacts.Hardening(done, left);
	}

	private List<RecordFacts.Day> days(GeoPoint point, LocalDate seen) {
		LocalDate from = seen.minusDays(WEATHER_DAYS);
		try {
			WeatherSeries series = this.weather.days().at(point, from, seen);
			if (series.days().stream().allMatch((one) -> one.minimum() == null && one.rain() == null)) {
				return List.of();
			}
			Map<LocalDate, Double> wind = this.weather.days().windAt(point, from, seen);
			Map<LocalDate, Boolean> frozen = this.weather.grounds().frozenDays(point, from, seen);
			return series.days()
				.stream()
				.map((one) -> new RecordFacts.Day(one.date(), one.minimum(), one.maximum(), one.rain(),
						wind.get(one.date()), frozen.get(one.date())))
				.toList();
		}
		catch (BadInput ex) {
			// A day out of the bounds of the record has no weather.
			return List.of();
		}
	}

	private RecordFacts.@Nullable Drought drought(GeoPoint point, LocalDate seen) {
		return this.weather.droughts()
			.at(point, seen)
			.map((one) -> new RecordFacts.Drought(one.lastDay(), one.severity()))
			.orElse(null);
	}

	private RecordFacts.@Nullable Soil soil(Planting planting, LocalDate seen) {
		return this.soilTests.latest(planting.site(), 0, PAGE)
			.stream()
			.filter((test) -> (test.planting() == null || planting.id().equals(test.planting()))
					&& !test.day().isAfter(seen) && test.day().isAfter(seen.minusYears(SOIL_TEST_YEARS)))
			.findFirst()
			.map(SiteRecords::soil)
			.orElse(null);
	}

	private static RecordFacts.Soil soil(KeptSoilTest test) {
		Boolean slow = (test.drainage() != SoilDrainage.UNTESTED) ? test.drainage() != SoilDrainage.GOOD : null;
		return new RecordFacts.Soil(test.day(), test.figures().acidity(),
				(test.figures().extract() == SoilExtract.SATURATED_PASTE) ? test.figures().conductivity() : null, slow);
	}

	private Span.@Nullable Freezes freezes(Site site, LocalDate seen) {
		int season = Season.containing(seen, site.point().hemisphere()).year();
		PlaceMarkers markers = this.weather.climate().markersAt(site.place());
		Optional<SeasonMarker> spring = markers.on(key(MarkerKind.LAST_SPRING_FREEZE), season);
		Optional<SeasonMarker> fall = markers.on(key(MarkerKind.FIRST_FALL_FREEZE), season);
		return (spring.isPresent() && fall.isPresent()) ? new Span.Freezes(spring.get().date(), fall.get().date())
				: null;
	}

	private static MarkerKey key(MarkerKind kind) {
		return new MarkerKey(kind, new TemperatureThreshold(32, true), 50);
	}

}
