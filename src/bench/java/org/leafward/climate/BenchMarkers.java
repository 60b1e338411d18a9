package org.leafward.climate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.RulePacks;
import org.leafward.care.core.phase.Estimate;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.DayByDay;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.Span;
import org.leafward.care.core.rule.Timing;
import org.leafward.care.pack.ConfiguredPacks;

/**
 * Forty markers: all that the rule packs hang on, the usual ones of a site's page, and of
 * the kinds that no pack uses yet those that gardeners' rules speak of.
 */
final class BenchMarkers {

	static final List<MarkerKey> ALL = all();

	private BenchMarkers() {
	}

	private static List<MarkerKey> all() {
		List<MarkerKey> keys = new ArrayList<>();
		for (int probability : new int[] { 10, 50, 90 }) {
			for (String threshold : new String[] { "36F", "32F", "28F", "24F" }) {
				keys.add(key(MarkerKind.LAST_SPRING_FREEZE, threshold, probability));
				keys.add(key(MarkerKind.FIRST_FALL_FREEZE, threshold, probability));
			}
		}
		keys.add(key(MarkerKind.GROUND_THAW, null, 50));
		keys.add(key(MarkerKind.GROUND_FREEZE, null, 50));
		keys.add(key(MarkerKind.NIGHTS_WARM_TO, "50F", 50));
		keys.add(key(MarkerKind.NIGHTS_WARM_TO, "55F", 50));
		keys.add(key(MarkerKind.NIGHTS_COOL_TO, "55F", 50));
		keys.add(key(MarkerKind.NIGHTS_COOL_TO, "50F", 50));
		keys.add(key(MarkerKind.NIGHTS_COOL_TO, "45F", 50));
		keys.add(key(MarkerKind.SOIL_WARMS_TO, "45F", 50));
		keys.add(key(MarkerKind.SOIL_WARMS_TO, "50F", 50));
		keys.add(key(MarkerKind.SOIL_WARMS_TO, "60F", 50));
		keys.add(key(MarkerKind.SOIL_COOLS_TO, "60F", 50));
		keys.add(key(MarkerKind.SOIL_COOLS_TO, "50F", 50));
		keys.add(key(MarkerKind.DAYS_COOL_TO, "60F", 50));
		for (int sum : new int[] { 100, 200, 500 }) {
			keys.add(new MarkerKey(MarkerKind.DEGREE_DAYS, TemperatureThreshold.parse("50F"), 50, HeatGoal.of(sum)));
		}
		return List.copyOf(keys);
	}

	private static MarkerKey key(MarkerKind kind, @Nullable String threshold, int probability) {
		return new MarkerKey(kind, (threshold != null) ? TemperatureThreshold.parse(threshold) : null, probability);
	}

	/** The markers that the shipped rules and phases hang on. */
	static List<MarkerKey> ofPacks() {
		RulePacks packs = ConfiguredPacks.read();
		Stream<Anchor> rules = packs.all()
			.stream()
			.flatMap((pack) -> pack.rules().stream())
			.flatMap((rule) -> anchors(rule.timing()));
		Stream<Anchor> phases = packs.phenology()
			.phases()
			.stream()
			.flatMap((phase) -> phase.estimates().stream())
			.map(Estimate::at);
		return Stream.concat(rules, phases)
			.filter(MarkerAnchor.class::isInstance)
			.map(MarkerAnchor.class::cast)
			.flatMap((anchor) -> Stream.iterate(anchor, Objects::nonNull, MarkerAnchor::floor))
			.map(MarkerAnchor::marker)
			.distinct()
			.toList();
	}

	private static Stream<Anchor> anchors(Timing timing) {
		if (timing instanceof Ramp ramp) {
			return Stream.of(ramp.anchor());
		}
		return (timing instanceof Span span) ? Stream.of(span.from(), span.to())
				: Stream.of(((DayByDay) timing).from(), ((DayByDay) timing).to());
	}

}
