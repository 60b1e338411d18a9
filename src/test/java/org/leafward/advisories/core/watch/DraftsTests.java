package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.DraftText;
import org.leafward.advisories.Figure;
import org.leafward.advisories.conditions.ConfiguredConditions;
import org.leafward.language.Language;
import org.leafward.language.Phrasebook;
import org.leafward.language.Phrasebooks;
import org.leafward.language.Units;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;

import static org.assertj.core.api.Assertions.assertThat;

/** Drafted texts. */
class DraftsTests {

	private static final Phrasebooks BOOKS = new Phrasebooks(new KnowledgeFiles(""), new KnowledgeReader(), List.of());

	private static final Phrasebook ENGLISH = BOOKS.of(Language.ENGLISH);

	private static final Phrasebook SPANISH = BOOKS.of(Language.SPANISH);

	private static Hit hit(String day, double high) {
		LocalDate date = LocalDate.parse(day);
		return new Hit(date, date, List.of(figure(FigureKind.HIGH, high), figure(FigureKind.RAIN_PAST, 3)), List.of(),
				List.of());
	}

	private static Figure figure(FigureKind kind, double value) {
		return new Figure(kind.code(), kind.label(7), value, kind.unit().name(), 0.0, null);
	}

	@Test
	void figuresOfSeveralCountiesAreARange() {
		List<CountyHit> hits = List.of(new CountyHit("b", "Birch County", hit("2026-07-12", 36)),
				new CountyHit("a", "Alder County", hit("2026-07-11", 33)));
		WatchCondition condition = ConfiguredConditions.get("hot-dry-wind");
		DraftText english = Drafts.of(condition, hits, ENGLISH);
		assertThat(english.what()).isEqualTo("Highs of 33 °C (91 °F) to 36 °C (97 °F) are forecast in Alder County and "
				+ "Birch County, after only 3 mm (0.1 in) of rain in a week.");
		assertThat(english.where()).isEqualTo("Alder County, Birch County.");
		assertThat(english.when()).isEqualTo("From Sat 11 Jul 2026 to Sun 12 Jul 2026.");
		DraftText spanish = Drafts.of(condition, hits, SPANISH);
		assertThat(spanish.what()).contains("33 °C (91 °F) a 36 °C (97 °F) en Alder County y Birch County");
		assertThat(spanish.when()).isEqualTo("Del sáb 11 jul 2026 al dom 12 jul 2026.");
	}

	@Test
	void aNightIsToldFromItsEvening() {
		Hit night = new Hit(LocalDate.parse("2026-04-10"), LocalDate.parse("2026-04-11"),
				List.of(figure(FigureKind.LOW, -2.2)), List.of(),
				List.of(new Bilingual("apple at bloom: lost", "manzano en floración: perdido")));
		DraftText text = Drafts.of(ConfiguredConditions.get("late-freeze"),
				List.of(new CountyHit("a", "Alder County", night)), ENGLISH);
		assertThat(text.when()).isEqualTo("The night from Fri 10 Apr 2026 to Sat 11 Apr 2026.");
		assertThat(text.what()).isEqualTo("Down to −2 °C (28 °F) is forecast in Alder County, while fruit buds have "
				+ "opened. Apple at bloom: lost.");
	}

	static Stream<WatchCondition> conditions() {
		return ConfiguredConditions.all().stream();
	}

	/**
	 * With a figure of every kind no place stays open, in either language and any unit.
	 */
	@ParameterizedTest
	@MethodSource("conditions")
	void nothingStaysOpen(WatchCondition condition) {
		List<Figure> figures = Stream.of(FigureKind.values()).map((kind) -> figure(kind, 5)).toList();
		Hit hit = new Hit(LocalDate.parse("2026-07-10"), LocalDate.parse("2026-07-12"), figures, List.of(),
				List.of(new Bilingual("apple at bloom", "manzano en floración")));
		List<CountyHit> hits = List.of(new CountyHit("a", "Alder County", hit));
		for (Phrasebook book : List.of(ENGLISH, SPANISH)) {
			DraftText text = Drafts.of(condition, hits, book);
			String all = String.join("\n", text.headline(), text.what(), text.where(), text.when(), text.impacts(),
					text.toDo());
			assertThat(all).doesNotContain("{", "}", "null", "..");
			assertThat(text.headline().length()).isLessThan(160);
			assertThat(Units.METRIC.in(all)).doesNotContain("°F (", " mph");
		}
	}

	@Test
	void manyCountiesAreCounted() {
		List<CountyHit> hits = Stream.of("A", "B", "C", "D", "E", "F", "G", "H", "J")
			.map((name) -> new CountyHit(name, name + " County", hit("2026-07-12", 36)))
			.toList();
		assertThat(Drafts.of(ConfiguredConditions.get("hot-dry-wind"), hits, ENGLISH).what())
			.contains("in 9 counties,");
	}

}
