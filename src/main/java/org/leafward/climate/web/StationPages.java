package org.leafward.climate.web;

import java.time.MonthDay;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.leafward.climate.FreezeDates;
import org.leafward.climate.LocalClimate;
import org.leafward.climate.Station;
import org.leafward.climate.StationId;
import org.leafward.climate.StationPage;
import org.leafward.climate.Stations;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.BadInput;
import org.leafward.measure.Explanation;
import org.leafward.measure.NotThere;
import org.leafward.measure.SeasonDay;
import org.leafward.pages.FreezeCurve;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** The stations, and what each one's record says of freezes. */
@Controller
class StationPages {

	private static final int PAGE = 50;

	private static final List<TemperatureThreshold> THRESHOLDS = List.of(TemperatureThreshold.parse("32F"),
			TemperatureThreshold.parse("28F"));

	/** Any year without 29 February; the curves hold for every year. */
	private static final int PLAIN_YEAR = 2001;

	private final Stations stations;

	private final LocalClimate climate;

	private final Latest latest;

	StationPages(Stations stations, LocalClimate climate, Latest latest) {
		this.stations = stations;
		this.climate = climate;
		this.latest = latest;
	}

	/**
	 * A station in a list.
	 *
	 * @param id identifier
	 * @param name its name
	 * @param more height and whether it is invented
	 */
	record Listed(String id, String name, String more) {
	}

	@GetMapping("/stations")
	String stations(@RequestParam(defaultValue = "0") int page, Model model) {
		StationPage found = this.stations.page(page, PAGE);
		model.addAttribute("section", "stations");
		model.addAttribute("lead",
				(found.total() == 0) ? "No station is registered yet." : "Every date begins at one of these.");
		model.addAttribute("stations",
				found.stations()
					.stream()
					.map((one) -> new Listed(one.id().value(), one.name(),
							"%s, %.0f m%s".formatted(one.id().value(), one.point().elevationMetres(),
									one.invented() ? ", invented" : "")))
					.toList());
		model.addAttribute("page", page);
		model.addAttribute("hasNext", (long) (page + 1) * PAGE < found.total());
		return "climate/stations";
	}

	@GetMapping("/stations/{id}")
	String station(@PathVariable String id, Model model) {
		StationId stationId = id(id);
		Station station = this.stations.find(stationId).orElseThrow(() -> new NotThere("There is no station " + id));
		List<FreezeDates> tables = new ArrayList<>();
		for (TemperatureThreshold threshold : THRESHOLDS) {
			try {
				tables.add(this.climate.freezeDates(stationId, null, null, threshold));
			}
			catch (BadInput ex) {
				// The record covers no season yet; the page says so.
			}
		}
		model.addAttribute("section", "stations");
		model.addAttribute("station", station);
		model.addAttribute("latest", this.latest.of(stationId));
		model.addAttribute("curves", tables.stream().map(StationPages::curve).toList());
		model.addAttribute("lead", tables.isEmpty() ? "Its daily record is not loaded, or too short for freeze dates."
				: lead(tables.get(0)));
		model.addAttribute("explanation", tables.isEmpty() ? null : explain(tables.get(0)));
		model.addAttribute("record",
				tables.isEmpty() ? null : "seasons %d to %d".formatted(tables.get(0).from(), tables.get(0).to()));
		return "climate/station";
	}

	private static StationId id(String text) {
		try {
			return new StationId(text.toUpperCase(Locale.ROOT));
		}
		catch (BadInput ex) {
			throw new NotThere("There is no station " + text);
		}
	}

	private static String lead(FreezeDates table) {
		MonthDay late = date(table.spring(), 10);
		MonthDay early = date(table.fall(), 10);
		if (late == null || early == null) {
			return "Freezes are too rare here, or the record too short, to give their dates.";
		}
		return "One year in ten still freezes on or after %s; one year in ten freezes by %s.".formatted(words(late),
				words(early));
	}

	private static String words(MonthDay day) {
		return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
	}

	private static @Nullable MonthDay date(FreezeDates.Curve curve, int probability) {
		for (FreezeDates.Point point : curve.points()) {
			if (point.probability() == probability) {
				return point.date();
			}
		}
		return null;
	}

	private static FreezeCurve curve(FreezeDates table) {
		return new FreezeCurve("freeze-" + table.threshold().code().toLowerCase(Locale.ROOT).replace('.', '-'),
				table.threshold().words(), chances(table.spring()), chances(table.fall()), List.of());
	}

	private static List<FreezeCurve.Chance> chances(FreezeDates.Curve curve) {
		return curve.points()
			.stream()
			.filter((point) -> point.probability() % 5 == 0)
			.map((point) -> new FreezeCurve.Chance(point.probability(), SeasonDay.toDate(point.value(), PLAIN_YEAR)))
			.toList();
	}

	private static Explanation explain(FreezeDates table) {
		return Explanation
			.of("Freeze dates at or below " + table.threshold().words(),
					"seasons %d to %d".formatted(table.from(), table.to()))
			.withDetail(
					"Each season's last spring day and first fall day with such a minimum are ranked, and the dates "
							+ "are read between the ranks. In spring 10 % is the late, safe date; in fall 10 % is the early one.")
			.withSource("Empirical quantile, Hyndman and Fan (1996) type 7; direction of the probabilities as in "
					+ "NCEI's freeze normals")
			.withSteps(List.of(counts("Spring", table.spring()), counts("Fall", table.fall())));
	}

	private static Explanation counts(String side, FreezeDates.Curve curve) {
		Explanation step = Explanation.of(side, "%d seasons used, %d without a freeze, %d left out for missing days"
			.formatted(curve.used(), curve.without(), curve.leftOut()));
		return (curve.undefined() != null) ? step.withDetail(curve.undefined()) : step;
	}

}
