package org.leafward.register.core.list;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.measure.BadInput;
import org.leafward.plants.Catalogue;
import org.leafward.plants.CatalogueFixture;
import org.leafward.plants.NameLookup;
import org.leafward.register.Placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.junit.jupiter.api.Assertions.assertTimeout;

class PlantListTests {

	private static final Catalogue CATALOGUE = CatalogueFixture.configured();

	private static final Predicate<String> NAMES = (name) -> NameLookup.isName(CATALOGUE, name);

	private static List<ListLine> lines(String text) {
		return PlantList.read(text, NAMES).lines();
	}

	private static ListLine line(String text) {
		List<ListLine> lines = lines(text);
		assertThat(lines).hasSize(1);
		return lines.get(0);
	}

	/** Lines as gardeners write them; what is expected was written down by hand. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', quoteCharacter = '`', nullValues = "-",
			value = {
					"12 boxwood, hedge by the gate, 2019-05-01, pot|boxwood|12|hedge by the gate|2019-05-01|CONTAINER",
					"boxwood|boxwood||boxwood||-", "3x tomato|tomato|3|tomato||-",
					"3 x tomato, May 2021|tomato|3|tomato|May 2021|-", "tomato x 4|tomato|4|tomato||-",
					"tomatoes (6)|tomatoes|6|tomatoes||-", "tomatoes 6|tomatoes|6|tomatoes||-",
					"12 plants of red maple, 2019|red maple|12|red maple|2019|-",
					"2019, red maple, front lawn|red maple||front lawn|2019|-",
					"front lawn, red maple, 2019|red maple||front lawn|2019|-",
					"hedge by the gate, 12 common lilac|common lilac|12|hedge by the gate||-",
					"red maple, May 5, 2019, 2 plants|red maple|2|red maple|May 5, 2019|-",
					"red maple planted in May 2019|red maple||red maple|planted in May 2019|-",
					"12 tomato in pots|tomato|12|tomato||CONTAINER",
					"tomato, in the ground, 5, east side, by the wall|tomato|5|east side, by the wall||GROUND",
					"albahaca, en maceta, mayo de 2020|albahaca||albahaca|mayo de 2020|CONTAINER",
					"3 Xanthoceras|Xanthoceras|3|Xanthoceras||-",
					"Acer rubrum 'Red Sunset', 2 plants|Acer rubrum 'Red Sunset'|2|Acer rubrum 'Red Sunset'||-" })
	void linesWithoutAHeader(String text, String name, String count, String label, String planted,
			Placement placement) {
		ListLine line = line(text);
		assertThat(line.name()).isEqualTo(name);
		assertThat(line.count()).isEqualTo((count != null) ? count : "");
		assertThat(line.label()).isEqualTo(label);
		assertThat(line.planted()).isEqualTo((planted != null) ? planted : "");
		assertThat(line.placement()).isEqualTo(placement);
		assertThat(line.written()).isEqualTo(text);
		assertThat(line.number()).isEqualTo(1);
	}

	@Test
	void columnsWithAHeaderInAnyOrderAndInSpanish() {
		PlantList list = PlantList.read("""
				Qty\tCommon name\tNotes\tDate planted\tContainer\tPrice\tArea (sq ft)
				12\tred maple\tfront, by the road\t5/21/2019\tno\t$40\t130

				3\ttomato\t\t2024\tx\t\t""", NAMES);
		assertThat(list.header()).isTrue();
		assertThat(list.unused()).containsExactly("Price");
		assertThat(list.lines().get(0))
			.isEqualTo(new ListLine(2, "12\tred maple\tfront, by the road\t5/21/2019\tno\t$40\t130", "red maple", "12",
					"front, by the road", "5/21/2019", Placement.GROUND, "130 sq ft", List.of()));
		assertThat(list.lines().get(1)).isEqualTo(new ListLine(4, "3\ttomato\t\t2024\tx\t\t", "tomato", "3", "tomato",
				"2024", Placement.CONTAINER, "", List.of()));
		ListLine spanish = lines("Planta;Cantidad;¿Dónde?;Año;Suelo o maceta\narce rojo;2;junto al muro;2019;maceta\n")
			.get(0);
		assertThat(spanish).isEqualTo(new ListLine(2, "arce rojo;2;junto al muro;2019;maceta", "arce rojo", "2",
				"junto al muro", "2019", Placement.CONTAINER, "", List.of()));
	}

	@Test
	void botanicalNamesAndVarietiesHaveColumnsOfTheirOwn() {
		ListLine line = lines("Name,Botanical name,Variety\nmy tree,Acer rubrum,Red Sunset\n").get(0);
		assertThat(line.name()).isEqualTo("Acer rubrum");
		assertThat(line.label()).isEqualTo("my tree, Red Sunset");
		assertThat(lines("Plant,Variety\ntomato,Brandywine").get(0).label()).isEqualTo("tomato Brandywine");
		assertThat(lines("Plant\n12 tomatoes").get(0).count()).isEqualTo("12");
	}

	/** RFC 4180, section 2: quotes around separators, line breaks, and doubled quotes. */
	@Test
	void quotedCells() {
		List<ListLine> lines = lines(
				"plant,label\r\n\"red maple\",\"front, by\r\nthe \"\"old\"\" road\"\r\ntomato,bed\r\n");
		assertThat(lines).extracting(ListLine::number).containsExactly(2, 4);
		assertThat(lines.get(0).label()).isEqualTo("front, by\nthe \"old\" road");
		assertThat(lines.get(1).name()).isEqualTo("tomato");
	}

	@Test
	void whatIsNotTakenOverIsTold() {
		assertThat(line("tomato, 5 gal pot").placement()).isEqualTo(Placement.CONTAINER);
		assertThat(line("tomato, 5 gal pot").remarks()).singleElement().asString().contains("“5 gal pot”");
		assertThat(lines("plant,pot\ntomato,blue").get(0).remarks()).containsExactly("Not taken over: “blue”.");
		assertThat(lines("plant,count\ntomato,3,more").get(0).remarks()).containsExactly("Not taken over: “more”.");
		assertThat(line("\"tomato, bed").remarks()).singleElement().asString().contains("not closed");
		assertThat(line("tomato" + ",".repeat(60) + "x").remarks()).singleElement().asString().contains("61 columns");
		assertThat(line("tomato, " + "a".repeat(4000)).remarks()).singleElement().asString().contains("4,000");
		assertThat(line("tomato, " + "a".repeat(4000)).written()).hasSize(4008);
	}

	@Test
	void tooMuchAndNothingAreRefused() {
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> lines("rose\n".repeat(10_000)))
			.satisfies((ex) -> assertThat(ex).hasToString("the list has 10,000 lines (text): add up to 400 at a time"));
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> lines("rose\n".repeat(401)))
			.withMessageContaining("401 lines");
		assertThat(lines("plant\n" + "rose\n".repeat(400))).hasSize(400);
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> lines("x".repeat(60_001)))
			.withMessageContaining("60,001");
		for (String nothing : List.of("", " \n\t\n", ",,,,\n;;;\n", ",", "\ufeff", "\u00a0")) {
			assertThatExceptionOfType(BadInput.class).isThrownBy(() -> lines(nothing)).withMessageContaining("empty");
		}
		assertThatExceptionOfType(BadInput.class).isThrownBy(() -> lines("plant,count\n"))
			.withMessageContaining("names of the columns");
	}

	@Test
	void hostileListsAreReadWithAllTheirLines() {
		Random random = new Random(20261126);
		List<String> pieces = List.of("tomato", "rose", "12", "3x ", "2019", "5/21/2019", "\"", "\"\"", ",", ";", "\t",
				"\n", "\r\n", " ", "\u202e", "\u0000", "\u0007", "\ud83c\udf31", "\ufffe", "pot", "plant", "count", "(",
				")", "'", "x".repeat(400), "\u05d0\u05d1", "=1+1", "<b>", "${7*7}", "\u00a0", "May 5", "%s");
		for (int i = 0; i < 3000; i++) {
			StringBuilder text = new StringBuilder("a\n");
			int length = random.nextInt(60);
			for (int j = 0; j < length; j++) {
				text.append(pieces.get(random.nextInt(pieces.size())));
			}
			PlantList list = PlantList.read(text.toString(), NAMES);
			String read = String.join("\n", list.lines().stream().map(ListLine::written).toList());
			String wanted = text.toString().replace("\r\n", "\n").replace('\ufffe', '\ufffd');
			// Separators alone say nothing; whatever else was typed is there again.
			String bare = "[,;\\s\u00a0\"]";
			assertThat(read.replaceAll(bare, "")).as("%s", text).isEqualTo(wanted.replaceAll(bare, ""));
			assertThat(list.lines()).allMatch((line) -> line.label().length() <= 1000);
		}
	}

	@Test
	void theLongestListsAreReadQuickly() {
		assertTimeout(Duration.ofSeconds(20), () -> {
			lines(("\"" + "a ".repeat(58) + "\n").repeat(400));
			lines(("7 " + "a ".repeat(40) + ", b, c, d, e\n").repeat(400));
			lines("a" + " ".repeat(59_000) + "b");
			lines((",".repeat(110) + "a\n").repeat(400));
		});
	}

}
