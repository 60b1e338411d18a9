package org.leafward.workdays.core.weather;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.core.comfort.HeatBand;
import org.leafward.climate.core.comfort.HeatIndex;
import org.leafward.climate.core.comfort.WindChill;
import org.leafward.workdays.core.weather.WeatherJudgement.Advice;
import org.leafward.workdays.core.weather.WeatherJudgement.Finding;
import org.leafward.workdays.core.weather.WeatherJudgement.Kind;

/**
 * Judges the forecast of a workday, two days ahead, when there is still time to tell
 * people. Heat follows the heat index and the bands of the US National Weather Service
 * (see {@link HeatIndex} and {@link HeatBand}), cold its wind chill; the bounds for rain,
 * snow and frozen ground are common practice without a source. Volunteers differ more in
 * age and health than crews at work, so a day in the band of danger is put off, not only
 * made lighter.
 */
public final class DayJudge {

	/** From here on a day is put off, mm: soil is worked wet and people get wet. */
	static final double SOAKING = 10;

	/** From here on rain is told, mm. */
	static final double WET = 2;

	/** Snow from here on covers what is to be done, mm. */
	static final double SNOWED_IN = 50;

	/** At and below this wind chill bare skin can freeze within 30 minutes (NWS), °F. */
	static final double FROSTBITE = -18;

	private static final double COLD = 20;

	private static final double MILES_PER_HOUR = 3600 / 1609.344;

	private static final double WARM = 80;

	/** Thunderstorms and smoke are no matter of winter, °C. */
	private static final double STORMS_FROM = 10;

	private static final Set<Work> DIGGING = EnumSet.of(Work.PLANT, Work.DIVIDE, Work.LIFT, Work.SOIL, Work.SOW);

	private DayJudge() {
	}

	/**
	 * Judges a day.
	 * @param outlook what is forecast
	 * @param works kinds of work that are planned
	 * @return advice with reasons, and reminders
	 */
	public static WeatherJudgement judge(DayOutlook outlook, Set<Work> works) {
		List<Finding> findings = new ArrayList<>();
		rain(outlook).ifPresent(findings::add);
		snow(outlook).ifPresent(findings::add);
		ground(outlook, works).ifPresent(findings::add);
		heat(outlook).ifPresent(findings::add);
		cold(outlook).ifPresent(findings::add);
		findings.sort(Comparator.comparing((Finding one) -> one.advice()).reversed());
		Advice advice = !findings.isEmpty() ? findings.get(0).advice() : outlook.known() ? Advice.GO : Advice.UNKNOWN;
		return new WeatherJudgement(outlook.day(), advice, findings, reminders(outlook));
	}

	private static Optional<Finding> rain(DayOutlook outlook) {
		Double amount = outlook.rainMillimetres();
		if (amount == null || amount < WET) {
			return Optional.empty();
		}
		String words = depth(amount) + " of rain.";
		return Optional.of((amount >= SOAKING)
				? new Finding(Kind.RAIN, Advice.PUT_OFF,
						words + " Wet soil is spoilt by feet and spades, and cut plants take up disease: put it off.")
				: new Finding(Kind.RAIN, Advice.CARE,
						words + " Bring rain clothes, leave pruning for dry hours, and mind slippery ground."));
	}

	private static String depth(double millimetres) {
		return String.format(Locale.ROOT, "%.0f mm (%.1f in)", millimetres, millimetres / 25.4);
	}

	private static String degrees(double fahrenheit) {
		return "%d °F (%d °C)".formatted(Math.round(fahrenheit), Math.round((fahrenheit - 32) / 1.8))
			.replace('-', '\u2212');
	}

	private static Optional<Finding> snow(DayOutlook outlook) {
		Double snow = outlook.snowMillimetres();
		if (snow == null || snow < 1) {
			return Optional.empty();
		}
		String words = depth(snow) + " of new snow.";
		return Optional.of((snow >= SNOWED_IN)
				? new Finding(Kind.SNOW, Advice.PUT_OFF, words + " Beds are covered and roads are slow: put it off.")
				: new Finding(Kind.SNOW, Advice.CARE, words + " Mind the roads, and what is slippery."));
	}

	private static Optional<Finding> ground(DayOutlook outlook, Set<Work> works) {
		if (outlook.frozenGround() == null || !outlook.frozenGround()) {
			return Optional.empty();
		}
		List<String> digging = works.stream().filter(DIGGING::contains).sorted().map(Work::words).toList();
		if (digging.isEmpty()) {
			return Optional.empty();
		}
		String words = "The ground is frozen, so there is no " + String.join(", no ", digging) + ".";
		return Optional.of((digging.size() == works.size())
				? new Finding(Kind.FROZEN_GROUND, Advice.PUT_OFF, words + " Nothing else is planned: put it off.")
				: new Finding(Kind.FROZEN_GROUND, Advice.CARE, words + " The other work can be done."));
	}

	private static Optional<Finding> heat(DayOutlook outlook) {
		Double high = outlook.high();
		if (high == null) {
			return Optional.empty();
		}
		double shade = fahrenheit(high);
		Integer humidity = outlook.humidity();
		// whole degrees, as the chart of the Service and our words have them
		double index = Math.rint((humidity == null) ? shade : HeatIndex.fahrenheit(shade, humidity));
		if (humidity == null && shade < WARM) {
			return Optional.empty();
		}
		return HeatBand.of(index).map((band) -> {
			String words = (humidity == null) ? degrees(shade)
					+ " in the shade; without humidity the heat index isn’t known, and is higher when it is humid."
					: "Heat index %s in the afternoon (%s); full sun can add 15 °F (8 °C).".formatted(degrees(index),
							band.words());
			boolean off = band.compareTo(HeatBand.DANGER) >= 0;
			return new Finding(Kind.HEAT, off ? Advice.PUT_OFF : Advice.CARE,
					words + " " + (off ? "Put it off, or begin at sunrise and end before the heat. " : "")
							+ HeatBand.work(index)
							+ " Children, older people and those with a weak heart or on medicine feel it sooner; "
							+ "whoever is confused or stops sweating needs an ambulance.");
		});
	}

	private static Optional<Finding> cold(DayOutlook outlook) {
		Double low = outlook.low();
		Double wind = outlook.wind();
		if (low == null || wind == null) {
			return Optional.empty();
		}
		OptionalDouble chill = WindChill.fahrenheit(fahrenheit(low), wind * MILES_PER_HOUR);
		if (chill.isEmpty() || chill.getAsDouble() > COLD) {
			return Optional.empty();
		}
		String words = "Wind chill %s around sunrise.".formatted(degrees(chill.getAsDouble()));
		return Optional.of((chill.getAsDouble() <= FROSTBITE)
				? new Finding(Kind.COLD, Advice.PUT_OFF,
						words + " Bare skin can freeze within 30 minutes: put it off, or begin when it is warmer.")
				: new Finding(Kind.COLD, Advice.CARE, words + " Bring gloves and a hat, and a warm place for breaks."));
	}

	/** From memory: the advice of the NWS on thunder, the classes of the EPA's index. */
	private static List<String> reminders(DayOutlook outlook) {
		List<String> reminders = new ArrayList<>();
		if (outlook.high() == null || outlook.high() >= STORMS_FROM) {
			reminders.add("Thunder means that lightning can strike: leave ladders and trees, go into a building or a "
					+ "closed car, and stay there until 30 minutes after the last thunder.");
			reminders.add("In times of fires look at the air quality index in the morning: above 100 those with "
					+ "asthma, heart trouble, the very young and the old stay at home, above 150 call the day off.");
		}
		return reminders;
	}

	private static double fahrenheit(double celsius) {
		return celsius * 1.8 + 32;
	}

}
