package org.leafward.care.pack;

import java.time.LocalDate;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.care.core.rule.Anchor;
import org.leafward.care.core.rule.CalendarAnchor;
import org.leafward.care.core.rule.EventAnchor;
import org.leafward.care.core.rule.MarkerAnchor;
import org.leafward.care.core.rule.PhaseAnchor;
import org.leafward.care.core.rule.PlantingDateAnchor;
import org.leafward.care.core.rule.SoilTestAnchor;
import org.leafward.care.core.rule.Span;
import org.leafward.knowledge.KnowledgeFiles;
import org.leafward.knowledge.KnowledgeReader;
import org.leafward.measure.Hemisphere;
import org.leafward.measure.Season;
import org.leafward.plants.CatalogueFixture;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * The packs on the dates of one assumed place in USDA zone 6, whose gardening year is
 * known: last freeze 20 April (one year in ten 8 May, nine in ten 3 April), first freeze
 * 15 October (one in ten 30 September), 28 °F on 28 October, ground frozen from 10
 * December to 5 March. Source: the horticulture notes of the project ("the year at a zone
 * 6 temperate site"); the nights and the late 28 °F date are assumed to fit.
 */
class PackDatesTests {

	private static final Map<String, String> DATES = Map.ofEntries(Map.entry("last-spring-freeze 32F p50", "04-20"),
			Map.entry("last-spring-freeze 32F p10", "05-08"), Map.entry("last-spring-freeze 32F p90", "04-03"),
			Map.entry("first-fall-freeze 32F p50", "10-15"), Map.entry("first-fall-freeze 32F p10", "09-30"),
			Map.entry("first-fall-freeze 28F p50", "10-28"), Map.entry("first-fall-freeze 24F p50", "11-12"),
			Map.entry("first-fall-freeze 28F p90", "11-14"), Map.entry("ground-freeze p50", "12-10"),
			Map.entry("ground-thaw p50", "03-05"), Map.entry("nights-warm-to 55F p50", "05-26"),
			Map.entry("nights-cool-to 55F p50", "09-15"), Map.entry("nights-cool-to 50F p50", "09-27"),
			Map.entry("nights-cool-to 45F p50", "10-08"), Map.entry("days-cool-to 50F p50", "11-08"),
			Map.entry("soil-warms-to 45F p50", "03-28"), Map.entry("soil-warms-to 50F p50", "04-10"),
			Map.entry("soil-cools-to 40F p50", "11-28"), Map.entry("last-spring-freeze 28F p50", "04-06"),
			Map.entry("soil-warms-to 40F p50", "03-18"), Map.entry("soil-warms-to 55F p50", "04-24"),
			Map.entry("upper-soil-warms-to 50F p50", "04-03"), Map.entry("upper-soil-warms-to 55F p50", "04-17"),
			Map.entry("soil-warms-to 60F p50", "05-06"), Map.entry("soil-warms-to 65F p50", "05-18"),
			Map.entry("soil-warms-to 70F p50", "06-05"), Map.entry("soil-cools-to 60F p50", "10-06"),
			Map.entry("nights-cool-to 60F p50", "08-31"), Map.entry("nights-warm-to 45F p10", "05-10"),
			Map.entry("nights-warm-to 50F p10", "05-25"));

	/**
	 * Phases there, assumed to fit the same notes (candles in mid-June, wrapping in late
	 * October as two weeks before leaf drop).
	 */
	private static final Map<String, String> PHASES = Map.ofEntries(Map.entry("forsythia-bloom", "04-05"),
			Map.entry("bud-swell", "03-28"), Map.entry("bud-break", "04-15"), Map.entry("half-inch-green", "04-22"),
			Map.entry("leaf-expanded", "05-22"), Map.entry("bloom-start", "04-24"), Map.entry("bloom-end", "05-05"),
			Map.entry("candle-expanded", "06-14"), Map.entry("harvest-start", "07-05"),
			Map.entry("harvest-end", "10-15"), Map.entry("leaf-drop", "11-02"), Map.entry("dormant", "11-20"));

	/**
	 * Sums of heat above 50 °F from 1 March there, assumed to fit the same notes (lace
	 * bug nymphs in April, euonymus scale in June, Japanese beetles in July).
	 */
	private static final NavigableMap<Integer, String> HEAT = new TreeMap<>(
			Map.of(50, "04-18", 100, "04-28", 200, "05-09", 300, "05-18", 500, "06-03", 900, "06-30", 1700, "08-06"));

	private static LoadedRulePacks packs;

	@BeforeAll
	static void load() {
		packs = new LoadedRulePacks(new KnowledgeFiles(""), new KnowledgeReader(), CatalogueFixture.configured());
	}

	private static LocalDate date(Anchor anchor) {
		if (anchor instanceof PlantingDateAnchor planting) {
			return LocalDate.of(2026, 5, 4).plusDays(planting.days().days());
		}
		if (anchor instanceof PhaseAnchor phase) {
			int year = phase.nextSeason() ? 2027 : 2026;
			assertThat(PHASES).containsKey(phase.phase());
			LocalDate counted = LocalDate.parse(year + "-" + PHASES.get(phase.phase())).plusDays(phase.days().days());
			return phase.bounds().keep(counted, new Season(year, Hemisphere.NORTH));
		}
		if (anchor instanceof EventAnchor event) {
			return LocalDate.of(2026, 5, 10).plusDays(event.days().days());
		}
		if (anchor instanceof SoilTestAnchor test) {
			return LocalDate.of(2026, 4, 10).plusDays(test.days().days());
		}
		if (anchor instanceof CalendarAnchor calendar) {
			return calendar.day().in(new Season(2026, Hemisphere.NORTH));
		}
		MarkerAnchor marker = (MarkerAnchor) anchor;
		int year = marker.nextSeason() ? 2027 : 2026;
		String day = (marker.marker().goal() != null) ? HEAT.ceilingEntry(marker.marker().goal().sum()).getValue()
				: DATES.get(marker.marker().code());
		assertThat(day).as(marker.marker().code()).isNotNull();
		LocalDate counted = LocalDate.parse(year + "-" + day).plusDays(marker.days().days());
		LocalDate own = marker.bounds().keep(counted, new Season(year, Hemisphere.NORTH));
		LocalDate floor = (marker.floor() != null) ? date(marker.floor()) : own;
		return own.isBefore(floor) ? floor : own;
	}

	@Test
	void noWindowEndsBeforeItBegins() {
		packs.all()
			.forEach((pack) -> pack.rules().stream().filter((rule) -> rule.timing() instanceof Span).forEach((rule) -> {
				Span span = (Span) rule.timing();
				assertThat(date(span.from())).as(pack.reference(rule)).isBeforeOrEqualTo(date(span.to()));
			}));
	}

	/** Month by month from the same notes. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', textBlock = """
			evergreens/no-late-pruning       | 2026-08-15 | 2026-08-20 | begins, last shear about 15 to 20 August
			evergreens/plant-in-fall         | 2026-08-20 | 2026-08-31 | begins, late August
			evergreens/no-late-planting      | 2026-10-14 | 2026-10-29 | begins, mid-October to 29 October
			evergreens/take-down-burlap      | 2026-04-03 | 2026-04-03 | begins, early date of the last freeze
			oaks/oak-no-pruning              | 2026-03-01 | 2026-04-01 | begins, by 1 April, mid-March in warm springs
			oaks/oak-pruning-window          | 2026-11-01 | 2026-11-30 | begins, November
			trees/trunk-wrap-on              | 2026-10-15 | 2026-10-31 | begins, late October
			trees/trunk-wrap-off             | 2026-03-15 | 2026-03-31 | begins, March
			trees/leaf-scorch-watch          | 2026-07-10 | 2026-07-20 | begins, mid-July
			salt/leach-salt                  | 2026-03-05 | 2026-03-05 | begins, as soon as the soil thaws
			roses-and-hydrangeas/hydrangea-no-cutting | 2026-08-08 | 2026-08-08 | begins, after the first week of August
			shrubs/spring-bloomers-no-pruning| 2026-07-10 | 2026-07-20 | begins, mid-July
			edibles/plant-garlic             | 2026-10-01 | 2026-10-31 | begins, garlic in October
			lawns/seed-in-fall               | 2026-08-15 | 2026-08-15 | begins, seeding opens 15 August
			safety/drain-irrigation          | 2026-09-30 | 2026-10-25 | begins, drain in fall before 28 °F
			feeding/no-late-nitrogen         | 2026-07-15 | 2026-08-01 | begins, last nitrogen in July
			evergreen-pruning/pinch-candles  | 2026-06-10 | 2026-06-20 | begins, pine candles in mid-June
			winter-shelter/set-stakes        | 2026-11-01 | 2026-11-30 | begins, stakes in November
			winter-shelter/rodent-guards     | 2026-11-01 | 2026-11-30 | begins, rodent guards in November
			winter-shelter/anti-desiccant-second | 2026-01-20 | 2026-02-05 | begins, midwinter thaw
			evergreens/winter-injury-survey  | 2026-03-10 | 2026-03-31 | begins, first survey in March
			oaks/late-season-caution         | 2026-08-01 | 2026-08-01 | begins, the day after July
			fruit/apples-and-pears           | 2026-02-10 | 2026-02-28 | begins, fruit trees late in February
			fruit/grapes                     | 2026-02-01 | 2026-02-28 | begins, grapes in February
			roses-and-hydrangeas/smooth-hydrangea-cut-back | 2026-02-10 | 2026-02-28 | begins, February
			roses-and-hydrangeas/mound-roses | 2026-11-01 | 2026-11-30 | begins, rose mounds in November
			roses-and-hydrangeas/unmound-roses | 2026-03-25 | 2026-04-05 | begins, late March to early April
			roses-and-hydrangeas/hydrangea-shaping | 2026-07-01 | 2026-07-01 | begins, July to the first week of August
			grasses-and-perennials/cut-warm-grasses | 2026-03-01 | 2026-03-31 | begins, grasses in March
			oaks/oak-wilt-sample             | 2026-06-01 | 2026-06-01 | begins, oak wilt samples in June
			tree-health/leaf-scorch-sample   | 2026-08-01 | 2026-08-01 | begins, Xylella samples in August
			bulbs-and-perennials/winter-mulch-on | 2026-12-10 | 2026-12-10 | begins, after the surface has frozen
			""")
	void beginsWhenTheGardeningYearSaysSo(String reference, LocalDate earliest, LocalDate latest, String why) {
		Span span = (Span) packs.find(reference).orElseThrow().timing();
		assertThat(date(span.from())).as("%s %s", reference, why).isBetween(earliest, latest);
	}

}
