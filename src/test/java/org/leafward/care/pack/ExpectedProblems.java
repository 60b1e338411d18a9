package org.leafward.care.pack;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leafward.knowledge.Problem;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The problems that a broken file must be told. The file begins with them, one a line:
 * line, column, and words that must be said. Lines and columns were counted in the text,
 * not taken from the reader.
 *
 * @param file the file
 * @param problems what it must be told
 */
record ExpectedProblems(Path file, List<Expected> problems) {

	private static final Pattern EXPECTED = Pattern.compile("# expect (\\d+):(\\d+) (.+)");

	private record Expected(int line, int column, String words) {

		boolean meets(Problem problem) {
			return problem.line() == this.line && problem.column() == this.column
					&& (problem.what() + "; " + problem.mend()).contains(this.words);
		}

	}

	static ExpectedProblems of(Path file) throws IOException {
		return new ExpectedProblems(file,
				Files.readAllLines(file)
					.stream()
					.map(EXPECTED::matcher)
					.filter(Matcher::matches)
					.map((found) -> new Expected(Integer.parseInt(found.group(1)), Integer.parseInt(found.group(2)),
							found.group(3)))
					.toList());
	}

	void assertToldBy(List<Problem> told) {
		assertThat(this.problems).isNotEmpty();
		assertThat(told).as("problems of %s", this.file.getFileName()).hasSameSizeAs(this.problems);
		for (Expected one : this.problems) {
			assertThat(told).as("%s of %s", one, this.file.getFileName()).anyMatch(one::meets);
		}
	}

}
