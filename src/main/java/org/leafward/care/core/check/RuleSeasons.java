package org.leafward.care.core.check;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.leafward.care.core.phase.Phenology;
import org.leafward.care.core.rule.Rule;
import org.leafward.measure.DayWindow;
import org.leafward.measure.SeasonDay;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;

/**
 * When in the year a rule falls on the middle one of the reference climates, for those
 * who look through the rules. Good to a week or two.
 */
public final class RuleSeasons {

	/** What the place is called. */
	public static final String PLACE = "Westchester, New York";

	/** A year without a leap day; its number means nothing. */
	private static final int YEAR = 2001;

	private static final Species NO_PLANT = new Species(new SpeciesId("none"), "None", "none", List.of(), List.of(),
			Set.of());

	private final List<Species> catalogue;

	private final ReferenceDates dates;

	/**
	 * Creates the dating.
	 * @param catalogue the species to try
	 * @param phenology the estimates of phases
	 */
	public RuleSeasons(Collection<Species> catalogue, Phenology phenology) {
		this.catalogue = catalogue.stream().sorted(Comparator.comparing((one) -> one.id().value())).toList();
		this.dates = new ReferenceDates(ReferenceClimate.ALL.get(1), phenology);
	}

	/** The quarters of the year as gardeners on the northern half count them. */
	public enum Quarter {

		/** March to May. */
		SPRING,

		/** June to August. */
		SUMMER,

		/** September to November. */
		FALL,

		/** December to February. */
		WINTER;

		static Quarter of(int month) {
			return values()[((month + 9) % 12) / 3];
		}

	}

	/**
	 * The days of a rule.
	 * @param rule the rule
	 * @return for the first species that it is for and that can be dated; empty where it
	 * hangs on a planting date, a logged event or a soil test, or can't be dated there
	 */
	public Optional<DayWindow> window(Rule rule) {
		ReferenceDates.Ends ends = ReferenceDates.Ends.of(rule.timing(), Optional.empty());
		for (var end : List.of(ends.from(), ends.to())) {
			if (!end.movable().isEmpty()) {
				return Optional.empty();
			}
		}
		List<Species> plants = rule.concern().site().isEmpty()
				? this.catalogue.stream().filter(rule.concern()::addresses).toList() : List.of(NO_PLANT);
		return plants.stream()
			.map((plant) -> this.dates.window(rule, Optional.empty(), plant))
			.flatMap(Optional::stream)
			.findFirst()
			.map((days) -> new DayWindow(SeasonDay.toDate(days.from(), YEAR), SeasonDay.toDate(days.to(), YEAR)));
	}

	/**
	 * The quarters that days lie in.
	 * @param window the days
	 * @return at least one
	 */
	public static Set<Quarter> quarters(DayWindow window) {
		Set<Quarter> quarters = EnumSet.noneOf(Quarter.class);
		for (int month = 0; !window.from().plusMonths(month).withDayOfMonth(1).isAfter(window.to())
				&& month < 12; month++) {
			quarters.add(Quarter.of(window.from().plusMonths(month).getMonthValue()));
		}
		return quarters;
	}

}
