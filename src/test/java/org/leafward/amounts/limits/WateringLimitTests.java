package org.leafward.amounts.limits;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.measure.DayWindow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Limits of counties, read and put into words. */
class WateringLimitTests {

	@TempDir
	Path folder;

	private WateringLimitTable table(String content) throws IOException {
		Path own = Files.createDirectories(this.folder.resolve("watering"));
		Files.writeString(own.resolve("mine.yaml"), content);
		return new WateringLimitTable(new KnowledgeFiles(this.folder.toString()), new KnowledgeReader());
	}

	@Test
	void theFilesOfTheServerAreRead() {
		WateringLimitTable table = new WateringLimitTable(new KnowledgeFiles(""), new KnowledgeReader());
		assertThat(table.of("Merrow County")).hasValueSatisfying((limit) -> {
			assertThat(limit.days()).containsExactlyInAnyOrder(DayOfWeek.TUESDAY, DayOfWeek.FRIDAY, DayOfWeek.SUNDAY);
			assertThat(limit.words()).isEqualTo("Merrow County allows it on Tuesday, Friday and Sunday from 18:00 to "
					+ "10:00 in the morning after (sprinklers and hoses; a can in the hand is free).");
		});
		assertThat(table.of(" merrow county ")).isPresent();
		assertThat(table.of("Nowhere")).isEmpty();
	}

	@Test
	void anOwnFileIsLaidBesideThem() throws IOException {
		WateringLimitTable table = table(
				"title: Mine\nlimits:\n  - {county: Elm County, days: [], concerns: sprinklers, "
						+ "source: County code 7}\n");
		assertThat(table.of("Elm County")).hasValueSatisfying((limit) -> {
			assertThat(limit.words()).isEqualTo("Elm County allows no watering now (sprinklers).");
			assertThat(limit.explain(DayWindow.of(LocalDate.of(2026, 7, 6))).value())
				.isEqualTo("not allowed on these days");
		});
		assertThat(table.of("Sable County")).isPresent();
	}

	/** 6 July 2026 is a Monday. */
	@ParameterizedTest
	@CsvSource({ "2026-07-06, 2026-07-06, ", "2026-07-06, 2026-07-07, 2026-07-07", "2026-07-06, 2026-07-30, 2026-07-07",
			"2026-07-08, 2026-07-09, ", "2026-07-10, 2026-07-10, 2026-07-10" })
	void findsTheNextAllowedDay(LocalDate from, LocalDate to, LocalDate first) {
		WateringLimitTable table = new WateringLimitTable(new KnowledgeFiles(""), new KnowledgeReader());
		WateringLimit limit = table.of("Merrow County").orElseThrow();
		assertThat(limit.firstIn(new DayWindow(from, to)).orElse(null)).isEqualTo(first);
		assertThat(limit.words(new DayWindow(from, to)).endsWith("None of the days of this task is one of them."))
			.isEqualTo(first == null);
	}

	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '~', value = {
			"{county: Elm County, days: [someday], concerns: all, source: Code}|watering/mine.yaml:3",
			"{county: Elm County, days: [monday], hours: {from: \"25:00\", to: \"10:00\"}, concerns: all, "
					+ "source: Code}|watering/mine.yaml:3",
			"{county: Elm County, days: [monday], concerns: all}|'source' is missing",
			"{county: Sable County, days: [monday], concerns: all, source: Code}|'Sable County' has two limits" })
	void aBrokenFileIsExplained(String entry, String problem) {
		assertThatExceptionOfType(BrokenKnowledge.class)
			.isThrownBy(() -> table("title: Mine\nlimits:\n  - " + entry + "\n"))
			.satisfies((ex) -> assertThat(ex.getMessage()).contains(problem));
	}

}
