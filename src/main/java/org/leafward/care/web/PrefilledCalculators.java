package org.leafward.care.web;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.amounts.calculator.Calculation;
import org.leafward.amounts.light.HardeningRamp;
import org.leafward.amounts.water.TreeWatering;
import org.leafward.care.RulePacks;
import org.leafward.care.core.amount.Roots;
import org.leafward.care.core.rule.Ramp;
import org.leafward.care.core.rule.RampLight;
import org.leafward.care.core.rule.Rule;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.measure.Hemisphere;
import org.leafward.pages.Choice;
import org.leafward.plants.Catalogue;
import org.leafward.plants.Species;
import org.leafward.register.Beds;
import org.leafward.register.KeptSoilTest;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Site;
import org.leafward.register.SoilFigures;
import org.leafward.register.SoilTests;
import org.springframework.stereotype.Component;

/**
 * Addresses of the calculators with what is known of a planting filled in. Where a figure
 * that an answer needs isn't known, the form waits for it.
 */
@Component
class PrefilledCalculators {

	private final Catalogue catalogue;

	private final RulePacks packs;

	private final Beds beds;

	private final SoilTests soilTests;

	private final Clock clock;

	PrefilledCalculators(Catalogue catalogue, RulePacks packs, Beds beds, SoilTests soilTests, Clock clock) {
		this.catalogue = catalogue;
		this.packs = packs;
		this.beds = beds;
		this.soilTests = soilTests;
		this.clock = clock;
	}

	/** What fits the planting, with its address. */
	List<Choice> of(Planting planting, Site whole) {
		Site site = this.beds.with(whole).around(planting);
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), site.zone());
		Optional<Species> species = this.catalogue.find(planting.species());
		boolean ground = planting.placement() == Placement.GROUND && !planting.wintersIndoors();
		List<Choice> all = new ArrayList<>();
		all.add(new Choice(address("water", planting, water(planting, site, species, today)),
				"Water: how much, and for how long"));
		if (ground && species.filter((one) -> one.groups().contains("woody")).isPresent()) {
			all.add(new Choice(address("new-tree", planting, newTree(planting, site)),
					"New tree: when and how much to water until it has grown in"));
		}
		ramp(planting)
			.ifPresent((light) -> all.add(new Choice(address("light", planting, light(planting, site, light, today)),
					"Hardening off: how much light and how long, day by day")));
		if (ground) {
			all.add(new Choice(address("salt", planting, salt(planting, site, species)),
					"Salt: how much water carries it out of a bed"));
			all.add(new Choice(address("soil-test", planting, soilTest(planting, site)),
					"Soil test: is it salt or sodium, and does gypsum help"));
		}
		return all;
	}

	private static String address(String calculator, Planting planting, Map<String, String> fields) {
		fields.values().removeIf(String::isEmpty);
		fields.put("for", planting.id().toString());
		return "/calculators/" + calculator + "?" + Calculation.query(fields);
	}

	private static Map<String, String> water(Planting planting, Site site, Optional<Species> species, LocalDate today) {
		Double trunk = planting.size().calliperMillimetres();
		Double pot = planting.size().potLitres();
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("soil", code(site.soil()));
		fields.put("flow", number(site.litresPerMinute()));
		if (planting.placement() == Placement.CONTAINER) {
			fields.put("what", "pot");
			fields.put("pot", number(pot));
			fields.put("fill", (pot == null) ? "true" : "");
		}
		else if (trunk != null) {
			long weeks = Math.max(0, ChronoUnit.WEEKS.between(planting.plantedOn(), today));
			boolean young = weeks / 52.18 < TreeWatering.yearsToGrowIn(trunk);
			fields.put("what", young ? "young-tree" : "tree");
			fields.put("calliper", number(trunk));
			fields.put("weeks", young ? String.valueOf(weeks) : "");
		}
		else {
			fields.put("what", "bed");
			fields.put("area", number(planting.size().squareMetres()));
			fields.put("depth", species.map((one) -> number(Roots.of(one).depthMetres() * 1000)).orElse(""));
		}
		return fields;
	}

	private static Map<String, String> newTree(Planting planting, Site site) {
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("calliper", number(planting.size().calliperMillimetres()));
		fields.put("planted", planting.plantedOn().toString());
		fields.put("count", String.valueOf(Math.min(planting.count(), 1000)));
		fields.put("flow", number(site.litresPerMinute()));
		fields.put("fill", (planting.size().calliperMillimetres() == null) ? "true" : "");
		return fields;
	}

	/** How a rule takes plants of its species out, if one does. */
	private Optional<RampLight> ramp(Planting planting) {
		return this.packs.all()
			.stream()
			.flatMap((pack) -> pack.rules().stream())
			.map(Rule::timing)
			.filter(Ramp.class::isInstance)
			.flatMap((timing) -> Stream.ofNullable(((Ramp) timing).light()))
			.filter((light) -> light.way() == RampLight.Way.OUT && light.bySpecies().containsKey(planting.species()))
			.findFirst()
			.or(() -> planting.wintersIndoors() ? Optional.of(new RampLight(RampLight.Way.OUT, null, Map.of()))
					: Optional.empty());
	}

	private static Map<String, String> light(Planting planting, Site site, RampLight ramp, LocalDate today) {
		Raised raised = planting.raised();
		LocalDate out = planting.plantedOn().isBefore(today) ? today.plusDays(HardeningRamp.USUAL_DAYS + 1L)
				: planting.plantedOn();
		TemperatureThreshold night = ramp.lowestNight(planting.species());
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("latitude", String.valueOf(site.point().latitude()));
		fields.put("longitude", String.valueOf(site.point().longitude()));
		fields.put("elevationMetres", String.valueOf(site.point().elevationMetres()));
		fields.put("zone", site.zone().getId());
		fields.put("date", out.toString());
		fields.put("start", start(raised, site.point().hemisphere() == Hemisphere.NORTH));
		if (raised != null && raised.in() == RaisedIn.LAMPS) {
			fields.put("level", number(raised.micromoles()));
			fields.put("unit", "micromoles");
			fields.put("hours", number(raised.hours()));
			fields.put("fill", (raised.micromoles() == null || raised.hours() == null) ? "true" : "");
		}
		fields.put("site", code(site.sun()));
		fields.put("nightCelsius",
				(night != null) ? String.format(Locale.ROOT, "%.1f", night.celsius()).replaceAll("\\.0$", "") : "");
		return fields;
	}

	private static String start(@Nullable Raised raised, boolean north) {
		if (raised == null) {
			return "unknown";
		}
		return switch (raised.in()) {
			case MIDDAY_WINDOW -> north ? "south-window" : "north-window";
			case SUNLESS_WINDOW -> north ? "north-window" : "south-window";
			case MORNING_WINDOW -> "east-window";
			case AFTERNOON_WINDOW -> "west-window";
			case LAMPS -> "lamp";
			case GREENHOUSE -> "glasshouse";
		};
	}

	private static Map<String, String> salt(Planting planting, Site site, Optional<Species> species) {
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("area", number(planting.size().squareMetres()));
		fields.put("rootDepth", species.map((one) -> number(Roots.of(one).depthMetres() * 100)).orElse("30"));
		fields.put("soil", code(site.soil()));
		return fields;
	}

	private Map<String, String> soilTest(Planting planting, Site site) {
		Map<String, String> fields = new LinkedHashMap<>();
		fields.put("area", number(planting.size().squareMetres()));
		fields.put("soil", code(site.soil()));
		Optional<KeptSoilTest> test = this.soilTests.latest(List.of(site.id()))
			.getOrDefault(site.id(), List.of())
			.stream()
			.filter((one) -> one.planting() == null || one.planting().equals(planting.id()))
			.max(Comparator.comparing(KeptSoilTest::day).thenComparing((one) -> one.planting() != null));
		test.ifPresent((one) -> {
			SoilFigures figures = one.figures();
			fields.put("ph", number(figures.acidity()));
			fields.put("ec", number(figures.conductivity()));
			fields.put("extract", code(figures.extract()));
			fields.put("sar", number(figures.sodiumRatio()));
			fields.put("esp", number(figures.sodiumPercent()));
			fields.put("cec", number(figures.exchange()));
			fields.put("depth", number(one.depthCentimetres()));
			fields.put("drainage", code(one.drainage()));
		});
		fields.put("fill", (test.isEmpty() || planting.size().squareMetres() == null) ? "true" : "");
		return fields;
	}

	private static String code(Enum<?> constant) {
		return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
	}

	private static String number(@Nullable Double value) {
		return (value != null)
				? BigDecimal.valueOf(Math.round(value * 100) / 100.0).stripTrailingZeros().toPlainString() : "";
	}

}
