package org.leafward.climate.core.water;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** What stood in for a value that was not measured, as FAO-56 (chapter 3) advises. */
public enum Substitute {

	/** The dew point is taken as the minimum temperature (equation 48). */
	DEW_POINT_FROM_MINIMUM("dew point taken as the day's minimum (FAO-56, equation 48)"),

	/** The radiation is estimated from the range of temperature (equation 50). */
	RADIATION_FROM_TEMPERATURES("radiation estimated from the range of temperature (FAO-56, equation 50)"),

	/** The wind is taken as 2 m/s at 2 m. */
	WIND_TWO_METRES_PER_SECOND("wind taken as 2 m/s (FAO-56, chapter 3)");

	/** All the sets that there can be, so that a day need not make its own. */
	private static final List<Set<Substitute>> SETS = IntStream.range(0, 1 << values().length)
		.mapToObj((bits) -> Arrays.stream(values())
			.filter((substitute) -> (bits & 1 << substitute.ordinal()) != 0)
			.collect(Collectors.toUnmodifiableSet()))
		.toList();

	private static final Map<Set<Substitute>, List<String>> WORDS = SETS.stream()
		.collect(Collectors.toUnmodifiableMap(Function.identity(),
				(set) -> set.stream().sorted().map(Substitute::words).toList()));

	private final String words;

	Substitute(String words) {
		this.words = words;
	}

	/**
	 * What was done, for explanations.
	 * @return a few words
	 */
	public String words() {
		return this.words;
	}

	/**
	 * What Penman-Monteith needs and a day lacks.
	 * @param weather the day
	 * @return what stands in
	 */
	static Set<Substitute> of(WeatherDay weather) {
		return SETS
			.get(bit(DEW_POINT_FROM_MINIMUM, weather.humidity()) | bit(RADIATION_FROM_TEMPERATURES, weather.sunlight())
					| bit(WIND_TWO_METRES_PER_SECOND, weather.wind()));
	}

	private static int bit(Substitute substitute, @Nullable Object measured) {
		return (measured == null) ? 1 << substitute.ordinal() : 0;
	}

	/**
	 * What was done, for explanations.
	 * @param substitutes any number
	 * @return a few words for each, in the order of this list
	 */
	static List<String> words(Set<Substitute> substitutes) {
		return WORDS.getOrDefault(substitutes, List.of());
	}

}
