package org.leafward.lookalikes.key;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.leafward.lookalikes.core.Answer;
import org.leafward.lookalikes.core.Cause;
import org.leafward.lookalikes.core.Key;
import org.leafward.lookalikes.core.Remedy;
import org.leafward.support.SharedData;

import static org.assertj.core.api.Assertions.assertThat;

/** The key that comes with the server. */
class ConfiguredKeyTests {

	private static final Key KEY = ConfiguredKey.get();

	/**
	 * Cells that say more than the table does, with the reason beside them in the file.
	 */
	private static final Set<String> WEIGHED = Set.of("potassium-shortage oldest-leaves-first",
			"potassium-shortage leaf-brown-between-veins", "oak-wilt plant-oak", "dutch-elm-disease plant-elm-and-kin",
			"boxwood-blight plant-broadleaf-evergreen");

	/** Substances that would make a remedy a recommendation of a pesticide. */
	private static final List<String> PESTICIDES = List.of("spray it", "fungicide", "insecticide", "miticide",
			"insecticidal", "oxytetracycline", "propiconazole", "soap", "neem", "copper", "dormant oil", "herbicide");

	@Test
	void hasTheCausesAndEvidencesOfTheTradesTable() {
		assertThat(KEY.causes()).hasSize(23);
		assertThat(KEY.questions().stream().flatMap((one) -> one.answers().stream())).hasSize(70);
		assertThat(KEY.pairs()).hasSize(21);
	}

	/**
	 * The coding of every cell, against the table that it was taken from
	 * (knowledge/lookalikes.csv of the reference data: columns in the order of the
	 * questions, except that a few stand in another question).
	 */
	@Test
	void everyCellIsThatOfTheTable() throws Exception {
		List<List<String>> rows = quotedRows(Files.readAllLines(SharedData.file("knowledge/lookalikes.csv")));
		assertThat(rows).hasSize(24);
		List<String> columns = rows.get(0).subList(2, 72);
		Map<String, String> names = EvidenceNames.BY_COLUMN;
		assertThat(names.keySet()).containsExactlyInAnyOrderElementsOf(columns);
		List<String> wrong = new ArrayList<>();
		for (int row = 0; row < 23; row++) {
			Cause cause = KEY.cause(EvidenceNames.CAUSES.get(row)).orElseThrow();
			for (int column = 0; column < 70; column++) {
				String cell = rows.get(row + 1).get(column + 2);
				Double chance = cause.chances().get(names.get(columns.get(column)));
				Double expected = switch (cell) {
					case "typical" -> KEY.scale().typical();
					case "possible" -> KEY.scale().possible();
					case "rules-out" -> KEY.scale().unlikely();
					default -> null;
				};
				boolean weighed = WEIGHED.contains(cause.id() + " " + names.get(columns.get(column)));
				if (!weighed && !Objects.equals(chance, expected)) {
					wrong.add(cause.id() + " " + columns.get(column) + ": " + chance + ", the table has " + cell);
				}
			}
		}
		assertThat(wrong).isEmpty();
	}

	@Test
	void everyRemedyNamesARuleThatThereIs() {
		assertThat(ConfiguredKey.readWithRules().causes()).hasSize(23);
	}

	@Test
	void whatALaboratoryMustTellIsSuspectedAndHasASample() {
		Set<String> suspected = KEY.causes()
			.stream()
			.filter(Cause::laboratory)
			.map(Cause::id)
			.collect(Collectors.toCollection(TreeSet::new));
		assertThat(suspected).containsExactly("bacterial-scorch", "boxwood-blight", "dutch-elm-disease",
				"herbicide-drift", "oak-wilt", "root-rot", "verticillium-wilt");
		assertThat(KEY.causes()).filteredOn(Cause::laboratory).allSatisfy((cause) -> {
			assertThat(cause.title()).startsWith("Suspected: ");
			assertThat(cause.sample()).isNotNull();
		});
	}

	@Test
	void noRemedyNamesAPesticide() {
		List<String> named = new ArrayList<>();
		for (Cause cause : KEY.causes()) {
			for (Remedy remedy : cause.remedies()) {
				String text = (remedy.title() + " " + remedy.text()).toLowerCase(Locale.ROOT);
				PESTICIDES.stream().filter(text::contains).forEach((one) -> named.add(cause.id() + ": " + one));
			}
		}
		assertThat(named).isEmpty();
	}

	@Test
	void workWithSawsAndTrenchesHasACaution() {
		assertThat(KEY.causes()).allSatisfy((cause) -> assertThat(cause.remedies())
			.filteredOn((one) -> (one.title() + one.text()).matches("(?i).*(dead wood|dead branches|trench|girdling).*")
					&& !one.holdOff())
			.allSatisfy((one) -> assertThat(one.caution()).as(cause.id() + "/" + one.id()).isNotNull()));
	}

	@Test
	void everyCauseSaysWhereItComesFrom() {
		assertThat(KEY.causes()).allSatisfy((cause) -> assertThat(cause.references()).isNotEmpty());
	}

	@Test
	void noWordsAreLongerThanAPhoneShowsWell() {
		assertThat(KEY.questions()).allSatisfy((one) -> {
			assertThat(one.text()).hasSizeLessThan(110);
			assertThat(one.answers()).extracting(Answer::words)
				.allSatisfy((words) -> assertThat(words).hasSizeLessThan(90));
		});
	}

	private static List<List<String>> quotedRows(List<String> lines) {
		List<List<String>> rows = new ArrayList<>();
		for (String line : lines) {
			List<String> fields = new ArrayList<>();
			StringBuilder field = new StringBuilder();
			boolean quoted = false;
			for (char letter : line.toCharArray()) {
				if (letter == '"') {
					quoted = !quoted;
				}
				else if (letter == ',' && !quoted) {
					fields.add(field.toString());
					field.setLength(0);
				}
				else {
					field.append(letter);
				}
			}
			fields.add(field.toString());
			rows.add(fields);
		}
		return rows;
	}

}
