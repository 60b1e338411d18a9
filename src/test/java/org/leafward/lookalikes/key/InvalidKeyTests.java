package org.leafward.lookalikes.key;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.knowledge.BrokenKnowledge;
import org.leafward.knowledge.KnowledgeFile;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.plants.CatalogueFixture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** A slip in a file of the key is named with file, line and how to mend it. */
class InvalidKeyTests {

	private static final KeyReader READER = new KeyReader(new KnowledgeReader(),
			KnownNames.of(CatalogueFixture.configured(), "salt/leach-salt"::equals));

	private static final List<KnowledgeFile> FILES = new KnowledgeFiles("").of(KeyReader.FOLDER);

	static Stream<Arguments> slips() {
		return Stream.of(slip("questions.yaml", "several: true", "severally: true", "severally"),
				slip("questions.yaml", "id: seen-autumn", "id: seen-leafing-out",
						"there already is an answer 'seen-leafing-out'; give this one an id of its own"),
				slip("questions.yaml", "id: webs", "id: none", "'none' is always an answer; leave it out"),
				slip("questions.yaml", "id: how-fast", "id: when", "there already is a question 'when'"),
				slip("questions.yaml", "possible: 0.35", "possible: 0.85", "make unlikely less than possible"),
				slip("questions.yaml", "usual: 0.25}", "usual: 1.25}", "questions.yaml:"),
				slip("causes-weather.yaml", "typical: [seen-late-winter,", "typical: [seen-late-wintr,",
						"no question has the answer 'seen-late-wintr'; write the id of an answer"),
				slip("causes-weather.yaml", "possible: [seen-leafing-out,", "possible: [seen-late-winter,",
						"'seen-late-winter' stands under two words; keep one"),
				slip("causes-weather.yaml", "trouble: winter-burn", "trouble: winter-bun",
						"the catalogue has no trouble 'winter-bun'"),
				slip("causes-weather.yaml", "carries: [winter-burn-prone]", "carries: [winter-prone]",
						"the catalogue has no trait 'winter-prone'"),
				slip("causes-weather.yaml", "only: [evergreen,", "only: [evergren,",
						"the catalogue has no plant group 'evergren'"),
				slip("causes-weather.yaml", "id: summer-scorch", "id: winter-burn",
						"there already is a cause 'winter-burn'"),
				slip("causes-weather.yaml", "from: 0, to: 60", "from: 60, to: 0",
						"it ends before it begins; write the earlier day as 'from'"),
				slip("causes-weather.yaml", "rule: evergreens/hang-burlap", "rule: evergreens/hang-burlapp",
						"there is no care rule 'evergreens/hang-burlapp'"),
				slip("causes-weather.yaml", "        work: prune", "        work: pruning", "pruning"),
				slip("causes-weather.yaml", "        work: prune\n", "", "work"),
				slip("pairs.yaml", "[winter-burn, salt-spray]", "[winter-burn, winter-burn]",
						"a cause can't be parted from itself"),
				slip("pairs.yaml", "[winter-burn, low-temperature]", "[salt-spray, winter-burn]",
						"this pair is there already"));
	}

	private static Arguments slip(String file, String right, String wrong, String complaint) {
		return Arguments.of(file, right, wrong, complaint);
	}

	@ParameterizedTest
	@MethodSource("slips")
	void isNamed(String file, String right, String wrong, String complaint) {
		List<KnowledgeFile> files = new ArrayList<>();
		int line = 0;
		for (KnowledgeFile one : FILES) {
			String text = new String(one.content(), java.nio.charset.StandardCharsets.UTF_8);
			if (one.name().endsWith("/" + file)) {
				assertThat(text).contains(right);
				line = (int) text.substring(0, text.indexOf(right)).lines().count();
				text = text.replaceFirst(java.util.regex.Pattern.quote(right),
						java.util.regex.Matcher.quoteReplacement(wrong));
			}
			files.add(KnowledgeFile.of(one.name(), text));
		}
		int first = line;
		assertThatExceptionOfType(BrokenKnowledge.class).isThrownBy(() -> READER.read(files))
			.satisfies((ex) -> assertThat(ex.problems()).anySatisfy((problem) -> {
				assertThat(problem.words()).contains(complaint);
				assertThat(problem.file()).isEqualTo("lookalikes/" + file);
				assertThat(problem.line()).isBetween(1, first + 60);
			}));
	}

}
