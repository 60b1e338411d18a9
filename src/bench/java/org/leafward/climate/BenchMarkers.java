package org.leafward.climate;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Forty markers: all that the rule packs hang on, the usual ones of a site's page, and of
 * the kinds that no pack uses yet those that gardeners' rules speak of.
 */
final class BenchMarkers {

	static final List<MarkerKey> ALL = all();

	private static final Pattern ANCHOR = Pattern
		.compile("marker: ([a-z-]+)(?:, threshold: (\\w+))?, probability: (\\d+)");

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

	/** The markers that the shipped rule packs hang on. */
	static List<MarkerKey> ofPacks() {
		try (Stream<Path> packs = Files.list(Path.of("config/rulepacks"))) {
			return packs.flatMap(BenchMarkers::anchors).distinct().toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static Stream<MarkerKey> anchors(Path pack) {
		try {
			List<String> lines = Files.readAllLines(pack).stream().filter((line) -> line.contains("marker:")).toList();
			if (!lines.stream().allMatch((line) -> ANCHOR.matcher(line).find())) {
				throw new IllegalStateException("a marker of another form in " + pack);
			}
			return lines.stream()
				.flatMap((line) -> ANCHOR.matcher(line).results())
				.map((found) -> key(kind(found.group(1)), found.group(2), Integer.parseInt(found.group(3))));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static MarkerKind kind(String code) {
		return Arrays.stream(MarkerKind.values()).filter((kind) -> kind.code().equals(code)).findFirst().orElseThrow();
	}

}
