package org.leafward.care.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.Degrees;
import org.leafward.care.CareTask;
import org.leafward.care.RulePacks;
import org.leafward.care.TaskKind;
import org.leafward.care.TaskState;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.Place;
import org.leafward.climate.Surroundings;
import org.leafward.climate.SurroundingsReader;
import org.leafward.climate.WeatherStates;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Component;

/**
 * What the coming night can hurt, at all sites of somebody.
 *
 * @param risks sites with the same low together, the coldest first, at most
 * {@value #MOST_RISKS}
 * @param more further risks that are not listed
 * @param quiet a sentence when nothing is at risk; null when there is nothing to say
 * @param coldest the site that the sentence is about; null without a sentence, and where
 * it is the only one
 * @param made how old the forecasts are, a sentence; null without one
 * @param unknown sites without a forecast, in words; null when all have one, or none has
 */
record Tonight(List<Risk> risks, int more, @Nullable String quiet, @Nullable String coldest, @Nullable String made,
		@Nullable String unknown) {

	private static final int MOST_RISKS = 4;

	private static final int MOST_NAMES = 4;

	/** Sites whose night is looked at. */
	private static final int MOST_SITES = 200;

	/**
	 * A low and what to do about it.
	 *
	 * @param low "Tonight −2 °C (28 °F)"
	 * @param sites names of the sites
	 * @param deeds what to do, the most urgent first
	 */
	record Risk(String low, List<String> sites, List<Deed> deeds) {
	}

	/**
	 * Work for the night.
	 *
	 * @param verb for example "Cover"
	 * @param plants what for
	 */
	record Deed(String verb, List<String> plants) {
	}

	/**
	 * A site's night.
	 *
	 * @param site name
	 * @param low lowest temperature that is forecast, °C at the site; null when not known
	 * @param made when the forecast was made; null when there is none
	 * @param open what still has to be done for it
	 * @param done how much of it was done
	 */
	record Night(String site, @Nullable Double low, @Nullable Instant made, List<CareTask> open, int done) {
	}

	/**
	 * Tells nights together.
	 * @param nights one for each site
	 * @param now the time, for the age of forecasts
	 * @return what to say
	 */
	static Tonight of(List<Night> nights, Instant now) {
		List<Night> known = nights.stream().filter((night) -> night.low() != null).toList();
		Map<Long, List<Night>> byLow = new TreeMap<>();
		known.stream()
			.filter((night) -> !night.open().isEmpty())
			.forEach((night) -> byLow.computeIfAbsent(Math.round(low(night)), (key) -> new ArrayList<>()).add(night));
		List<Risk> risks = byLow.values().stream().map(Tonight::risk).toList();
		Night coldest = known.stream().min(Comparator.comparingDouble(Tonight::low)).orElse(null);
		boolean quiet = risks.isEmpty() && coldest != null;
		List<String> without = nights.stream().filter((night) -> night.low() == null).map(Night::site).toList();
		return new Tonight(risks.stream().limit(MOST_RISKS).toList(), Math.max(0, risks.size() - MOST_RISKS),
				(quiet && coldest != null) ? quiet(coldest, known) : null,
				(quiet && coldest != null && known.size() > 1) ? coldest.site() : null, made(known, now),
				(known.isEmpty() || without.isEmpty()) ? null : some(without, "sites"));
	}

	private static double low(Night night) {
		return (night.low() != null) ? night.low() : Double.MAX_VALUE;
	}

	private static Risk risk(List<Night> nights) {
		double low = nights.stream().mapToDouble(Tonight::low).min().orElseThrow();
		Map<String, Set<String>> deeds = new LinkedHashMap<>();
		nights.stream()
			.flatMap((night) -> night.open().stream())
			.sorted(Comparator.comparing((CareTask task) -> rank(task.work())))
			.forEach((task) -> deeds.computeIfAbsent(verb(task.work()), (key) -> new LinkedHashSet<>())
				.add((nights.size() == 1) ? task.plant() : task.plant() + " at " + task.siteName()));
		return new Risk("Tonight " + Degrees.words(low), shortened(nights.stream().map(Night::site).toList(), "sites"),
				deeds.entrySet()
					.stream()
					.map((deed) -> new Deed(deed.getKey(), shortened(List.copyOf(deed.getValue()), "plantings")))
					.toList());
	}

	private static String quiet(Night coldest, List<Night> known) {
		boolean done = known.stream().anyMatch((night) -> night.done() > 0);
		return "Tonight about %s; %s".formatted(Degrees.words(low(coldest)),
				done ? "what had to be covered is noted as done." : "no cover is called for.");
	}

	/** The oldest counts, as it is the one to doubt. */
	private static @Nullable String made(List<Night> known, Instant now) {
		Instant oldest = null;
		for (Night night : known) {
			if (night.made() != null && (oldest == null || night.made().isBefore(oldest))) {
				oldest = night.made();
			}
		}
		if (oldest == null) {
			return null;
		}
		long hours = Math.max(0, Duration.between(oldest, now).toHours());
		return (hours == 0) ? "The forecast is less than an hour old."
				: "The forecast is %d %s old.".formatted(hours, (hours == 1) ? "hour" : "hours");
	}

	private static List<String> shortened(List<String> names, String what) {
		if (names.size() <= MOST_NAMES) {
			return names;
		}
		List<String> few = new ArrayList<>(names.subList(0, MOST_NAMES - 1));
		few.add("%d more %s".formatted(names.size() - few.size(), what));
		return few;
	}

	private static String some(List<String> names, String what) {
		return String.join(", ", shortened(names, what));
	}

	private static int rank(@Nullable Work work) {
		return (work == Work.COVER) ? 0 : (work == Work.MOVE) ? 1 : 2;
	}

	private static String verb(@Nullable Work work) {
		if (work == null) {
			return "See to";
		}
		return switch (work) {
			case COVER -> "Cover";
			case MOVE -> "Bring in";
			case HARVEST -> "Harvest";
			case WATER -> "Water if dry";
			case SHELTER -> "Shelter";
			default -> "See to";
		};
	}

	/** Reads the nights. */
	@Component
	static class Reader {

		private final SurroundingsReader surroundings;

		private final WeatherStates weather;

		private final RulePacks packs;

		private final Clock clock;

		Reader(SurroundingsReader surroundings, WeatherStates weather, RulePacks packs, Clock clock) {
			this.surroundings = surroundings;
			this.weather = weather;
			this.packs = packs;
			this.clock = clock;
		}

		/**
		 * The coming night.
		 * @param sites sites of a person
		 * @param tasks their tasks of today and tomorrow
		 * @return what to say of it
		 */
		Tonight of(Collection<Site> sites, Collection<CareTask> tasks) {
			Instant now = this.clock.instant();
			List<Site> some = sites.stream().limit(MOST_SITES).toList();
			if (some.isEmpty()) {
				return Tonight.of(List.of(), now);
			}
			Map<SiteId, List<CareTask>> cold = new LinkedHashMap<>();
			tasks.stream()
				.filter(this::forACold)
				.forEach((task) -> cold.computeIfAbsent(task.site(), (key) -> new ArrayList<>()).add(task));
			Surroundings around = this.surroundings.of(some.stream().map(Site::point).toList());
			return Tonight.of(some.stream()
				.map((site) -> night(site, around, now, cold.getOrDefault(site.id(), List.of())))
				.toList(), now);
		}

		private Night night(Site site, Surroundings around, Instant now, List<CareTask> cold) {
			LocalDate today = LocalDate.ofInstant(now, site.zone());
			// A night's minimum belongs to the day on which it ends.
			OptionalDouble low = this.weather.outlook(new Place(site.point(), site.microclimate()), today, around)
				.lowest(today.plusDays(1));
			List<CareTask> tonight = cold.stream().filter((task) -> task.window().to().equals(today)).toList();
			return new Night(site.name(), low.isPresent() ? low.getAsDouble() : null,
					around.forecastMade(site.point()).orElse(null),
					tonight.stream().filter((task) -> task.state() == TaskState.PLANNED).toList(),
					(int) tonight.stream().filter((task) -> task.state() == TaskState.DONE).count());
		}

		/** What the rules ask for on single days with a low. */
		private boolean forACold(CareTask task) {
			return task.kind() == TaskKind.DO && this.packs.find(task.rule()).filter(Rule::beforeANight).isPresent();
		}

	}

}
