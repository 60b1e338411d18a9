package org.leafward.workdays.effort;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leafward.care.core.rule.Work;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** Minutes by hand from the figures of the file. */
class EffortTableTests {

	private final EffortTable table = new EffortTable(new KnowledgeFiles(""), new KnowledgeReader());

	@Test
	void eachKindOfWorkHasItsFiguresAndASource() {
		assertThat(Arrays.stream(Work.values())).allSatisfy(
				(work) -> assertThat(this.table.of(null, work, 1, null).source()).isNotBlank().doesNotContain("guess"));
	}

	@Test
	void minutesGrowWithPlantsOrArea() {
		// 10 + 12 * 5 = 70; 10 + 12 * (20 + 40 / 4) = 370; 10 + 5 * 30 = 160
		assertThat(this.table.of(null, Work.PRUNE, 5, null).personMinutes()).isEqualTo(70);
		assertThat(this.table.of(null, Work.PRUNE, 60, null).personMinutes()).isEqualTo(370);
		assertThat(this.table.of(null, Work.PRUNE, 60, 30.0).personMinutes()).isEqualTo(160);
		assertThat(this.table.of(null, null, 1, null).personMinutes()).isEqualTo(20);
		assertThat(this.table.of(null, Work.MULCH, 1, 5000.0).personMinutes()).isEqualTo(TaskEffort.MOST);
	}

	@Test
	void spraysAreForThoseWithALicence() {
		assertThat(this.table.of(null, Work.TREAT, 1, null).skills()).containsExactly("pesticide-licence");
	}

	@Test
	void aKindThatIsThereTwiceIsToldByLine(@TempDir Path folder) throws IOException {
		Path own = Files.createDirectories(folder.resolve("workdays"));
		Files.writeString(own.resolve("mine.yaml"),
				"title: Mine\nworks:\n  - {work: mow, start: 1, plant: 0, source: measured here}\n");
		assertThatExceptionOfType(BrokenKnowledge.class)
			.isThrownBy(() -> new EffortTable(new KnowledgeFiles(folder.toString()), new KnowledgeReader()))
			.withMessageContaining("'mow' is there twice");
	}

}
