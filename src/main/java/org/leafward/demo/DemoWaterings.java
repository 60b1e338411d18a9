package org.leafward.demo;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Optional;
import org.leafward.register.NewWatering;
import org.leafward.register.Planting;

/** What the invented people watered last summer; all of it is made up. */
final class DemoWaterings {

	private DemoWaterings() {
	}

	/**
	 * The waterings of a site.
	 * @param site its name
	 * @param plantings what grows there
	 * @param today the day; all waterings are within the year before it
	 * @return none for most sites
	 */
	static List<NewWatering> of(String site, List<Planting> plantings, LocalDate today) {
		return switch (site) {
			case "Farrow house" -> List.of(whole(today, Month.JULY, 11, 20, "soaker hose, two hours"),
					bed("cutting roses", plantings, today, Month.JULY, 25, 12, "watering can"),
					whole(today, Month.AUGUST, 8, 25, "soaker hose, two and a half hours"),
					whole(today, Month.AUGUST, 29, 20, ""),
					whole(today, Month.OCTOBER, 31, 15, "before the hose was drained"));
			case "Ridge Road school garden" -> List.of(whole(today, Month.JULY, 6, 15, "the summer crew"),
					whole(today, Month.JULY, 20, 15, "the summer crew"),
					bed("strawberry bed", plantings, today, Month.AUGUST, 3, 10, ""));
			case "Larkmoor demonstration garden" ->
				List.of(whole(today, Month.JULY, 18, 25, "sprinkler; read from a straight-sided can"));
			default -> List.of();
		};
	}

	private static NewWatering whole(LocalDate today, Month month, int day, double millimetres, String note) {
		return new NewWatering(null, latest(today, month, day), millimetres, note);
	}

	private static NewWatering bed(String label, List<Planting> plantings, LocalDate today, Month month, int day,
			double millimetres, String note) {
		Optional<Planting> found = plantings.stream().filter((one) -> one.label().equals(label)).findFirst();
		return new NewWatering(found.orElseThrow().id(), latest(today, month, day), millimetres, note);
	}

	/** The last such day that is not to come. */
	private static LocalDate latest(LocalDate today, Month month, int day) {
		LocalDate thisYear = LocalDate.of(today.getYear(), month, day);
		return thisYear.isAfter(today) ? thisYear.minusYears(1) : thisYear;
	}

}
