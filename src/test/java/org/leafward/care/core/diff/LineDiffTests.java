package org.leafward.care.core.diff;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.leafward.care.core.diff.LineDiff.Change;
import org.leafward.care.core.diff.LineDiff.Line;

import static org.assertj.core.api.Assertions.assertThat;

class LineDiffTests {

	/**
	 * The first texts of the example in the GNU diffutils manual, "Two Sample Input
	 * Files" and "Example of Unified Format", without their shared end (from memory).
	 */
	@Test
	void theManualsExample() {
		String lao = """
				The Way that can be told of is not the eternal Way;
				The name that can be named is not the eternal name.
				The Nameless is the origin of Heaven and Earth;
				The Named is the mother of all things.
				Therefore let there always be non-being,
				""";
		String tzu = """
				The Nameless is the origin of Heaven and Earth;
				The named is the mother of all things.

				Therefore let there always be non-being,
				""";
		assertThat(LineDiff.between(lao, tzu)).extracting(Line::change)
			.containsExactly(Change.GONE, Change.GONE, Change.SAME, Change.GONE, Change.NEW, Change.NEW, Change.SAME);
	}

	@Test
	void nothingDiffersAndFarLinesAreLeftOut() {
		String text = IntStream.range(0, 40).mapToObj(String::valueOf).collect(Collectors.joining("\n"));
		assertThat(LineDiff.between(text, text)).isEmpty();
		List<Line> lines = LineDiff.between(text, text.replace("\n20\n", "\ntwenty\n"));
		assertThat(lines).hasSize(10);
		assertThat(lines.get(0).change()).isEqualTo(Change.LEFT_OUT);
		assertThat(lines).contains(new Line(Change.GONE, "20"), new Line(Change.NEW, "twenty"));
	}

	@Test
	void linesThatStayOrComeAreTheNewTextForAnyTexts() {
		Random random = new Random(11);
		for (int run = 0; run < 300; run++) {
			List<String> old = lines(random);
			List<String> young = lines(random);
			List<Line> lines = LineDiff.between(String.join("\n", old), String.join("\n", young));
			if (!lines.isEmpty() && lines.stream().noneMatch((line) -> line.change() == Change.LEFT_OUT)) {
				assertThat(texts(lines, Change.NEW)).isEqualTo(young);
				assertThat(texts(lines, Change.GONE)).isEqualTo(old);
			}
		}
	}

	private static List<String> texts(List<Line> lines, Change with) {
		return lines.stream()
			.filter((line) -> line.change() == Change.SAME || line.change() == with)
			.map(Line::text)
			.toList();
	}

	private static List<String> lines(Random random) {
		return IntStream.range(0, random.nextInt(9)).mapToObj((i) -> "line" + random.nextInt(4)).toList();
	}

}
