package org.leafward.care.garden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.care.core.plan.Plan;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The plans of twelve invented gardens, each reviewed by hand; what the review found
 * stands at the head of its file. {@code mvn test -Dtest=GoldenPlansTests
 * -Dleafward.golden=write} writes the plans anew and keeps the heads: read the
 * difference, and bring the head up to date, before you commit it.
 */
class GoldenPlansTests {

	private static final Path FOLDER = Path.of("src/test/resources/golden/plans");

	static Stream<String> gardens() {
		return Gardens.ALL.stream().map(Garden::name);
	}

	@ParameterizedTest
	@MethodSource("gardens")
	void planIsTheReviewedOne(String name) throws IOException {
		Garden garden = Gardens.named(name);
		Path file = FOLDER.resolve(name + ".txt");
		String now = new GoldenPlan(garden, GardenPlanner.plan(garden)).text();
		List<String> before = Files.exists(file) ? Files.readAllLines(file) : List.of();
		String head = before.stream()
			.takeWhile((line) -> line.startsWith("#"))
			.map((line) -> line + "\n")
			.collect(Collectors.joining());
		if ("write".equals(System.getProperty("leafward.golden"))) {
			Files.writeString(file, head + now);
		}
		assertThat(head.lines().filter((line) -> line.length() > 2)).as("review at the head of %s", file)
			.hasSizeGreaterThan(2);
		assertThat(Files.readString(file)).isEqualTo(head + now);
	}

	@ParameterizedTest
	@MethodSource("gardens")
	void orderOfPacksRulesAndPlantingsMakesNoDifference(String name) {
		Garden garden = Gardens.named(name);
		List<String> plan = seen(GardenPlanner.plan(garden));
		for (long seed = 0; seed < 3; seed++) {
			assertThat(seen(GardenPlanner.shuffled(garden, seed))).isEqualTo(plan);
		}
	}

	@Test
	void everyFileIsOfAGarden() throws IOException {
		try (Stream<Path> files = Files.list(FOLDER)) {
			assertThat(files.map((file) -> file.getFileName().toString().replace(".txt", "")))
				.containsExactlyInAnyOrderElementsOf(gardens().toList());
		}
	}

	private static List<String> seen(Plan plan) {
		return Stream
			.concat(plan.tasks()
				.stream()
				.map((task) -> "%s %s %s %s %s".formatted(task.id(), task.window(), task.call(), task.text(),
						task.explanation())),
					plan.gaps().stream().map(Object::toString))
			.sorted()
			.toList();
	}

}
