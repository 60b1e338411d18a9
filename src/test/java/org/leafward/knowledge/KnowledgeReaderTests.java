package org.leafward.knowledge;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

class KnowledgeReaderTests {

	private static final String SCHEMA = "schema/sample-1.json";

	private final KnowledgeReader reader = new KnowledgeReader();

	record Sample(String title, @Nullable Integer howMany, @Nullable Double depth, @Nullable List<String> names) {
	}

	private Reading<Sample> read(String text) {
		return this.reader.read(KnowledgeFile.of("samples/one.yaml", text), SCHEMA, Sample.class);
	}

	private Problem onlyProblem(String text) {
		Reading<Sample> reading = read(text);
		assertThat(reading.value()).isNull();
		assertThat(reading.problems()).hasSize(1);
		return reading.problems().get(0);
	}

	@Test
	void bindsHyphenatedEntriesToARecord() {
		Reading<Sample> reading = read("title: Rhododendron \u00d7 praecox\nhow-many: 3\ndepth: 2.5\nnames: [a, b]\n");
		assertThat(reading.problems()).isEmpty();
		assertThat(reading.value()).isEqualTo(new Sample("Rhododendron \u00d7 praecox", 3, 2.5, List.of("a", "b")));
	}

	@Test
	void leavesOutWhatIsLeftOut() {
		assertThat(read("title: One\n").value()).isEqualTo(new Sample("One", null, null, null));
	}

	@Test
	void collectsAllProblemsInTheOrderOfTheFile() {
		Reading<Sample> reading = read("how-many: 0\ndepth: deep\nnames: [a, a]\ncolour: red\n");
		assertThat(reading.problems()).extracting(Problem::words)
			.containsExactly("samples/one.yaml:1:1: 'title' is missing; add 'title': a title",
					"samples/one.yaml:1:11: 0 is too low; write 1 or more",
					"samples/one.yaml:2:8: 'deep' is written where a number is wanted; write a number",
					"samples/one.yaml:3:8: the list names something twice; remove the repetition",
					"samples/one.yaml:4:1: 'colour' is not known here; write one of: title, how-many, depth, names");
	}

	@Test
	void placesOfPartsServeLaterChecks() {
		Reading<Sample> reading = read("title: One\nnames:\n  - first\n  -   second\n");
		assertThat(reading.places().problem("/names/1", "no", "yes").words())
			.isEqualTo("samples/one.yaml:4:7: no; yes");
		assertThat(reading.places().problem("/names/1/absent", "no", "yes").line()).isEqualTo(4);
	}

	@Test
	void refusesAnEmptyFile() {
		assertThat(onlyProblem("# nothing but a comment\n").what()).isEqualTo("the file is empty");
	}

	@Test
	void refusesAFileThatIsTooLarge() {
		assertThat(onlyProblem("title: " + "x".repeat(KnowledgeFile.LARGEST)).what()).contains("larger than 2097152");
	}

	@Test
	void refusesTextThatIsNotUtf8() {
		byte[] latin = { 't', 'i', 't', 'l', 'e', ':', ' ', (byte) 0xe9, '\n' };
		Reading<Sample> reading = this.reader.read(new KnowledgeFile("samples/one.yaml", latin), SCHEMA, Sample.class);
		assertThat(reading.problems()).singleElement()
			.extracting(Problem::what)
			.isEqualTo("the file is not UTF-8 text");
	}

	/**
	 * The "billion laughs" document, shortened; its aliases are named and not followed.
	 */
	@Test
	void neverFollowsAliases() {
		StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
		for (int i = 1; i < 10; i++) {
			bomb.append("a%d: &a%d [%s]\n".formatted(i, i, "*a%d, ".formatted(i - 1).repeat(10)));
		}
		List<Problem> problems = read(bomb.toString()).problems();
		assertThat(problems).hasSize(90);
		assertThat(problems.get(0).words())
			.isEqualTo("samples/one.yaml:2:10: this refers to a value elsewhere ('*a0'); write the value out here");
	}

	@Test
	void refusesWhatIsNestedTooDeeply() {
		assertThat(onlyProblem("title: " + "[".repeat(2000) + "]".repeat(2000)).what()).contains("YAML");
	}

	@Test
	void namesThePlaceWhereTheYamlBreaks() {
		Problem problem = onlyProblem("title: One\nnames: [a, b\nhow-many: 3\n");
		assertThat(problem.line()).isEqualTo(3);
		assertThat(problem.what()).startsWith("this is not readable as YAML");
	}

	@Test
	void readsYesAndNoAsTextAndNotAsTruth() {
		assertThat(read("title: no\n").value()).isEqualTo(new Sample("no", null, null, null));
	}

	@Test
	void aMissingSchemaIsAMistakeOfTheProgram() {
		assertThatIllegalArgumentException()
			.isThrownBy(() -> this.reader.read(KnowledgeFile.of("a", "title: x"), "schema/none.json", Sample.class));
	}

}
