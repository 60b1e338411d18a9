package org.leafward.register.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeClimatology;
import org.leafward.climate.FreezeClimatology.Blended;
import org.leafward.climate.FreezeClimatology.Change;
import org.leafward.climate.FreezeClimatology.PeriodRow;
import org.leafward.climate.FreezeClimatology.StationUse;
import org.leafward.climate.FreezeClimatology.Years;
import org.leafward.climate.FreezeDates;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.NormalsPeriod;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.SeasonDay;
import org.leafward.register.OpenSites;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The freezes of a site by API. */
@RestController
@Tag(name = "Season markers", description = "Dates that the weather records give for a site")
class FreezeDatesApi {

	private static final int PLAIN_YEAR = 2001;

	private final OpenSites sites;

	private final LocalClimate climate;

	FreezeDatesApi(OpenSites sites, LocalClimate climate) {
		this.sites = sites;
		this.climate = climate;
	}

	/** Freezes of a site; dates are month and day as 05-15, differences days. */
	record Answer(String threshold, String period, double microclimateCelsius, Curve lastSpringFreeze,
			Curve firstFallFreeze, Curve frostFreeDays, List<StationAnswer> stations, @Nullable Double springSpreadDays,
			@Nullable Double fallSpreadDays, @Nullable Double springErrorDays, int springErrorStations,
			@Nullable Double fallErrorDays, int fallErrorStations, List<PeriodAnswer> periods) {
	}

	/** Probabilities 10, 20 … 90 %, or why there are none. */
	record Curve(@Nullable String undefined, List<PointAnswer> probabilities) {

		static Curve of(Blended blended) {
			return new Curve(blended.undefined(),
					blended.points()
						.stream()
						.filter((point) -> point.probability() % 10 == 0)
						.map(PointAnswer::of)
						.toList());
		}

	}

	/** One probability, with a date or a number of days. */
	record PointAnswer(int percent, @Nullable String date, @Nullable Double days) {

		static PointAnswer of(FreezeDates.Point point) {
			return (point.date() != null) ? new PointAnswer(point.probability(), monthDay(point.value()), null)
					: new PointAnswer(point.probability(), null, tenths(point.value()));
		}

	}

	/** A station with its share and how it lies to the site. */
	record StationAnswer(String id, String name, boolean invented, int from, int to, double weight,
			double distanceKilometres, double siteHigherByMetres, double siteColderByCelsius, SeasonsAnswer spring,
			SeasonsAnswer fall) {

		static StationAnswer of(StationUse use) {
			return new StationAnswer(use.station().id().value(), use.station().name(), use.station().invented(),
					use.from(), use.to(), Math.round(use.weight() * 10_000) / 10_000.0,
					Math.round(use.distanceKilometres() * 10) / 10.0, use.higherByMetres(),
					Math.round(use.colderByCelsius() * 100) / 100.0, SeasonsAnswer.of(use.spring()),
					SeasonsAnswer.of(use.fall()));
		}

	}

	/** The seasons of a station. */
	record SeasonsAnswer(@Nullable String median, int used, int without, int leftOut, @Nullable String undefined) {

		static SeasonsAnswer of(Years years) {
			return new SeasonsAnswer(monthDay(years.median()), years.used(), years.without(), years.leftOut(),
					years.undefined());
		}

	}

	/** The main dates over a period, with their difference to the latest 30 seasons. */
	record PeriodAnswer(String period, @Nullable Integer from, @Nullable Integer to, int stations,
			ChangeAnswer safeSpring, ChangeAnswer medianSpring, ChangeAnswer medianFall, ChangeAnswer earlyFall,
			LengthAnswer medianFrostFreeDays) {

		static PeriodAnswer of(PeriodRow row) {
			return new PeriodAnswer(row.period().code(), row.from(), row.to(), row.stations(),
					ChangeAnswer.of(row.spring()), ChangeAnswer.of(row.springMedian()),
					ChangeAnswer.of(row.fallMedian()), ChangeAnswer.of(row.fall()),
					new LengthAnswer(tenths(row.length().value()), tenths(row.length().later())));
		}

	}

	/** A date and how many days later than the default it is. */
	record ChangeAnswer(@Nullable String date, @Nullable Double later) {

		static ChangeAnswer of(Change change) {
			return new ChangeAnswer(monthDay(change.value()), tenths(change.later()));
		}

	}

	/** A length and how many days longer than the default it is. */
	record LengthAnswer(@Nullable Double days, @Nullable Double longer) {
	}

	@Operation(summary = "The freezes of a site at a threshold, with stations, spread, error and periods compared")
	@GetMapping("/api/v1/sites/{id}/freeze-dates")
	Answer freezeDates(@PathVariable UUID id, @RequestParam(defaultValue = "32F") String threshold,
			@RequestParam(defaultValue = "latest-30") String period) {
		FreezeClimatology freezes = this.climate.freezeClimatology(this.sites.own(id).place(),
				TemperatureThreshold.parse(threshold), NormalsPeriod.parse(period));
		return new Answer(freezes.threshold().code(), freezes.period().code(),
				freezes.place().microclimate().minimumOffset(), Curve.of(freezes.spring()), Curve.of(freezes.fall()),
				Curve.of(freezes.length()), freezes.stations().stream().map(StationAnswer::of).toList(),
				tenths(freezes.spread().spring()), tenths(freezes.spread().fall()),
				tenths(freezes.check().springError()), freezes.check().springCount(),
				tenths(freezes.check().fallError()), freezes.check().fallCount(),
				freezes.periods().stream().map(PeriodAnswer::of).toList());
	}

	private static @Nullable String monthDay(@Nullable Double day) {
		return (day == null) ? null : String.format(Locale.ROOT, "%1$tm-%1$td", SeasonDay.toDate(day, PLAIN_YEAR));
	}

	private static @Nullable Double tenths(@Nullable Double value) {
		return (value == null) ? null : Double.valueOf(Math.round(value * 10) / 10.0);
	}

}
