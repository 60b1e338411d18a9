package org.leafward.care.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.knowledge.Problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

/**
 * Each file in rulepacks/invalid begins with the problems it must be told; see
 * {@link ExpectedProblems}.
 */
class InvalidPacksTests {

	private static final Path FOLDER = Path.of("src/test/resources/rulepacks/invalid");

	private static final KnownPhases PHASES = new KnownPhases(Set.of("bud-break", "leaf-drop"), Set.of("wound"));

	static List<Path> files() throws IOException {
		try (Stream<Path> files = Files.list(FOLDER)) {
			return files.sorted().toList();
		}
	}

	@Test
	void thereAreFiles() throws IOException {
		assertThat(files()).hasSizeGreaterThanOrEqualTo(25);
	}

	@ParameterizedTest
	@MethodSource("files")
	void tellsEachProblemAtItsPlace(Path path) throws IOException {
		ExpectedProblems.of(path)
			.assertToldBy(problems(new KnowledgeFile("rulepacks/" + path.getFileName(), Files.readAllBytes(path))));
	}

	@Test
	void twoFilesMayNotCarryTheSamePack() {
		String text = """
				pack: sample
				version: 1
				title: Sample
				region: Anywhere, for a test only.
				rules:
				  - id: one
				    kind: watch
				    work: scout
				    title: Look
				    concerns: {groups: [boxwood]}
				    from: {marker: ground-freeze}
				    to: {marker: ground-freeze}
				    text: {what: Look., why: It helps.}
				    sources: [{title: Sample, grade: from-memory}]
				""";
		List<Problem> problems = problems(KnowledgeFile.of("rulepacks/a.yaml", text),
				KnowledgeFile.of("rulepacks/b.yaml", text));
		assertThat(problems).singleElement().satisfies((problem) -> {
			assertThat(problem.words()).startsWith("rulepacks/b.yaml:1:7: another file already has the pack 'sample'");
			assertThat(problem.path()).isEqualTo("/pack");
		});
	}

	private static List<Problem> problems(KnowledgeFile... files) {
		BrokenKnowledge broken = catchThrowableOfType(BrokenKnowledge.class,
				() -> new RulePackReader(new KnowledgeReader(), PlantsFixture.KNOWN, PHASES).read(List.of(files)));
		assertThat(broken).isNotNull();
		return broken.problems();
	}

}
