package org.leafward.care.pack;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.CatalogueFixture;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The lists in {@code shared/coverage}, which say for each row of the horticultural fact
 * base by which rules it is expressed, or why it is not. The fact base itself is large
 * reference data beside the checkout.
 */
class CoverageTests {

	private record Row(String file, String row, List<String> rules, String whyNot) {
	}

	private static LoadedRulePacks packs;

	@BeforeAll
	static void load() {
		packs = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(), CatalogueFixture.configured());
	}

	@Test
	void everyRuleNamedExists() {
		assertThat(rows()).isNotEmpty()
			.allSatisfy((row) -> assertThat(row.rules()).as("%s of %s", row.row(), row.file())
				.allMatch((rule) -> packs.find(rule).isPresent()));
	}

	@Test
	void everyRowHasRulesOrAReason() {
		assertThat(rows()).allSatisfy((row) -> {
			assertThat(row.row()).matches("CW\\d{3}|CROP:.+");
			assertThat(row.rules().isEmpty()).as("%s of %s", row.row(), row.file())
				.isNotEqualTo(row.whyNot().isEmpty());
			assertThat(row.whyNot()).matches("|.{30,}\\.");
		});
	}

	@Test
	void noRowStandsTwice() {
		assertThat(rows()).extracting(Row::row).doesNotHaveDuplicates();
	}

	@Test
	void everyRowOfTheFactBaseIsListed() {
		List<String> wanted = new ArrayList<>(firstFields("knowledge/care-windows.csv", ""));
		wanted.addAll(firstFields("knowledge/crop-timing.csv", "CROP:"));
		assertThat(rows()).extracting(Row::row).containsExactlyInAnyOrderElementsOf(wanted);
	}

	/** The first field holds no comma or quote in either table. */
	private static List<String> firstFields(String name, String prefix) {
		return lines(SharedData.file(name)).skip(1)
			.map((line) -> prefix + line.substring(0, line.indexOf(',')))
			.toList();
	}

	private static List<Row> rows() {
		try (Stream<Path> files = Files.list(Path.of("shared/coverage"))) {
			return files.filter((file) -> file.toString().endsWith(".csv"))
				.sorted()
				.flatMap((file) -> lines(file).skip(1).map((line) -> row(file.getFileName().toString(), line)))
				.toList();
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	private static Row row(String file, String line) {
		String[] fields = line.split(",", 3);
		assertThat(fields).as("%s: %s", file, line).hasSize(3);
		List<String> rules = Stream.of(fields[1].strip().split(" +")).filter((rule) -> !rule.isEmpty()).toList();
		String whyNot = fields[2].strip();
		return new Row(file, fields[0].strip(), rules,
				whyNot.startsWith("\"") ? whyNot.substring(1, whyNot.length() - 1).replace("\"\"", "\"") : whyNot);
	}

	private static Stream<String> lines(Path file) {
		try {
			return Files.readAllLines(file).stream().filter((line) -> !line.isBlank() && !line.startsWith("#"));
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

}
