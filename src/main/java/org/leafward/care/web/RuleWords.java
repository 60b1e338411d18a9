package org.leafward.care.web;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.Condition;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.Effort;
import org.leafward.care.core.rule.Grade;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Rule;
import org.leafward.care.core.rule.Source;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.core.rule.Weather;
import org.leafward.climate.TemperatureThreshold;

/** Rules in words for readers. */
final class RuleWords {

	private static final double KILOMETRES_PER_MILE = 1.609344;

	private RuleWords() {
	}

	/** For example "From the ground thawing to 14 days after bud break". */
	static String when(Timing timing) {
		if (timing instanceof Ramp ramp) {
			return "Over %d days that %s %s".formatted(ramp.days(), ramp.endsAtAnchor() ? "end on" : "begin on",
					anchor(ramp.anchor()));
		}
		if (timing instanceof DayByDay days) {
			return "On single days that the weather picks, from %s to %s".formatted(bare(days.from()), bare(days.to()));
		}
		Span span = (Span) timing;
		return "From %s to %s".formatted(bare(span.from()), bare(span.to()))
				+ (span.repeats() ? ", every %d days".formatted(span.everyDays()) : "");
	}

	/** The anchor after "from" or "to". */
	static String bare(Anchor anchor) {
		String words = anchor(anchor);
		return words.startsWith("on ") ? words.substring(3) : words;
	}

	static String anchor(Anchor anchor) {
		String bounds = (anchor instanceof MarkerAnchor marker) ? marker.bounds().words()
				: (anchor instanceof PhaseAnchor phase) ? phase.bounds().words() : "";
		return anchor.words() + (bounds.isEmpty() ? "" : " (" + bounds + ")");
	}

	/** Sentences about the weather. */
	static List<String> weather(Rule rule) {
		Weather weather = rule.weather();
		boolean held = rule.timing() instanceof Ramp ramp && ramp.light() != null;
		return Stream
			.of(rule.beforeANight() ? night(weather.opens()) : sentence("Called for while", weather.opens(), " and "),
					held ? held(weather.postpones()) : sentence("Put off by a day while", weather.postpones(), " or "),
					sentence("Not needed while", weather.withdraws(), " or "))
			.filter((sentence) -> !sentence.isEmpty())
			.toList();
	}

	/** What of the weather of a single day holds a ramp. */
	private static String held(List<Condition> conditions) {
		return conditions.isEmpty() ? "" : conditions.stream().map((condition) -> {
			String bound = bound(condition.bound() != null ? condition.bound() : "");
			return switch (condition.state()) {
				case "low-ahead" -> "a low of %s or colder".formatted(bound);
				case "high-ahead" -> "a high of %s or warmer".formatted(bound);
				case "cool-days" -> "a high of no more than %s".formatted(bound);
				case "wind-ahead" -> "a mean wind of %s or more".formatted(bound);
				default -> condition(condition);
			};
		}).collect(Collectors.joining(" or ", "Kept in on a day with ", "; its step waits for the next one."));
	}

	/** Of what the weather of a single night has to be. */
	private static String night(List<Condition> conditions) {
		return conditions.stream()
			.map((condition) -> condition.state().equals("low-ahead") && condition.bound() != null
					? "a low of %s or colder is forecast for the night".formatted(bound(condition.bound()))
					: condition(condition))
			.collect(Collectors.joining(" and ", "Called for while ", "."));
	}

	private static String sentence(String begin, List<Condition> conditions, String joint) {
		return conditions.isEmpty() ? ""
				: conditions.stream().map(RuleWords::condition).collect(Collectors.joining(joint, begin + " ", "."));
	}

	private static String condition(Condition condition) {
		String bound = bound(condition.bound() != null ? condition.bound() : "");
		return switch (condition.state()) {
			case "low-ahead" -> "a low of %s or colder is forecast within three days".formatted(bound);
			case "cool-days" -> "no day ahead is forecast to get warmer than %s".formatted(bound);
			case "wind-ahead" -> "a mean wind of %s or more is forecast within three days".formatted(bound);
			case "high-ahead" -> "a high of %s or warmer is forecast within three days".formatted(bound);
			case "hot-dry-wind" -> "a hot, dry wind blows";
			case "dry-days" -> "it has been dry for %d days".formatted(condition.days());
			case "drought" -> "drought is of class %s or worse".formatted(bound);
			case "heat-index" -> "the heat index reaches %s".formatted(bound);
			case "thaw-day" -> "the day warms above 4 °C (40 °F)";
			case "new-snow" -> "%s or more of new snow is forecast".formatted(bound);
			case "rain-week" -> "%s or more of rain fell in the last seven days".formatted(bound);
			case "root-zone-dry" -> "the root zone is dry";
			case "root-zone-moist" -> "the root zone is moist";
			case "ground-frozen" -> "the ground is frozen";
			default -> condition.state().replace('-', ' ');
		};
	}

	private static String bound(String written) {
		if (written.endsWith("F") || written.endsWith("C")) {
			return TemperatureThreshold.parse(written).words();
		}
		if (written.endsWith("mph")) {
			String miles = written.substring(0, written.length() - 3);
			return "%s mph (%.0f km/h)".formatted(miles, Double.parseDouble(miles) * KILOMETRES_PER_MILE);
		}
		return written.replaceFirst("(?<=[0-9])(?=[a-z])", " ");
	}

	/** What is worked out for each planting; null for nothing. */
	static @Nullable String computes(Rule rule) {
		if (rule.timing() instanceof Ramp ramp && ramp.light() != null) {
			return switch (ramp.light().way()) {
				case OUT ->
					"Hours, shade and clock time of each day, from the light in which the planting stands to that of "
							+ "its place; unfit days are held.";
				case IN -> "The place of each day, from the light of summer to that of its window.";
				case CLOTH -> "The cloth of each day, from the light in which it grew to full sun.";
			};
		}
		if (rule.computes() == null) {
			return null;
		}
		return switch (rule.computes()) {
			case REFILL -> "The water that is missing from the root zone, for the area of the planting.";
			case YOUNG_TREE, TREE ->
				"By the thickness of the trunk, or for a young shrub by its pot, where that is known.";
			case POT, FLUSH_POT -> "By the volume of the pot, where that is known.";
			case LEACHING -> "The water that takes half of the salt out of the root zone.";
			case GYPSUM ->
				"By the latest soil test of the bed, for its area, or for a square metre where that isn’t known.";
			case TESTED_LEACHING -> "The water that carries out as much salt as the latest soil test of the bed found.";
			case COVER -> "By the forecast of the night"
					+ ((rule.hurt().at() != null) ? "; the plants are hurt at " + rule.hurt().at().words() + "." : ".");
		};
	}

	/** For example "20 minutes for each plant". */
	static String effort(Effort effort) {
		return "About %d minutes for %s".formatted(effort.minutes(), switch (effort.per()) {
			case PLANT -> "each plant";
			case PLANTING -> "a planting";
			case SITE -> "the site";
		});
	}

	/** How far a source can be trusted. */
	static String trust(Grade grade) {
		return switch (grade) {
			case READ_IN_SOURCE -> "Its figures were read in this publication.";
			case COMMON_PRACTICE -> "Widely followed; no single publication was read for it.";
			case FROM_MEMORY -> "Written from memory and still to be checked; ask locally before you lean on it.";
		};
	}

	/** How far a rule can be trusted, in half a line. */
	static String trust(List<Source> sources) {
		return sources.stream()
			.map(Source::grade)
			.distinct()
			.sorted()
			.map(Grade::words)
			.collect(Collectors.joining("; "));
	}

}
