package org.leafward.care.core.amount;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.accounts.PersonId;
import org.leafward.amounts.Amount;
import org.leafward.care.core.plan.Subject;
import org.leafward.care.core.rule.Computes;
import org.leafward.care.core.rule.Hurt;
import org.leafward.care.core.rule.RampLight;
import org.leafward.climate.Microclimate;
import org.leafward.climate.TemperatureThreshold;
import org.leafward.climate.WaterView;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.measure.GeoPoint;
import org.leafward.plants.Habits;
import org.leafward.plants.Light;
import org.leafward.plants.Species;
import org.leafward.plants.SpeciesId;
import org.leafward.plants.Tolerance;
import org.leafward.register.Placement;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.PlantingSize;
import org.leafward.register.Raised;
import org.leafward.register.RaisedIn;
import org.leafward.register.Site;
import org.leafward.register.SiteBeds;
import org.leafward.register.SiteId;
import org.leafward.register.SoilTexture;
import org.leafward.register.Sun;
import org.leafward.register.WateredDepths;
import org.leafward.register.Wind;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * What of a planting goes into its amounts. Expected amounts follow the tables that the
 * tests of each formula name.
 */
class PlantAmountsTests {

	private static final LocalDate TODAY = LocalDate.of(2027, 7, 6);

	private static final DayWindow NOW = new DayWindow(TODAY, TODAY.plusDays(6));

	private static final DayWindow LATER = new DayWindow(TODAY.plusDays(40), TODAY.plusDays(46));

	private static Site site(double latitude, Sun sun, @Nullable Double flow) {
		return new Site(new SiteId(UUID.randomUUID()), new PersonId(UUID.randomUUID()), "Garden", "",
				new GeoPoint(latitude, -91, 200), ZoneId.of("America/Chicago"), SoilTexture.LOAM, sun, Wind.AVERAGE,
				Microclimate.NONE, "", Set.of(), flow);
	}

	private static Subject planting(String group, @Nullable Light light, PlantingSize size, @Nullable RaisedIn raised) {
		Species species = new Species(new SpeciesId("some-plant"), "Some plant", "some plant", List.of(),
				List.of(group), Set.of(), null, new Habits(null, null, light, Tolerance.UNKNOWN, List.of(), null),
				List.of());
		return Subject.of(new Planting(new PlantingId(UUID.randomUUID()), new SiteId(UUID.randomUUID()), species.id(),
				"bed", 3, LocalDate.of(2027, 5, 1), Placement.GROUND, raised == RaisedIn.MORNING_WINDOW, false, size,
				(raised != null) ? new Raised(raised, null, null) : null), species);
	}

	private static WaterView view(double depletion) {
		WaterView.Day day = new WaterView.Day(TODAY.minusDays(1), 0, 0, 4, 4, 0, depletion, 35, 1, false, false, false,
				9, true);
		return new WaterView(70, List.of(day), Explanation.of("Water of the bed", "some"));
	}

	private static String water(Computes computes, PlantingSize size, DayWindow window, double depletion) {
		return new PlantWater(SiteBeds.none(site(42, Sun.FULL_SUN, 10.0)), TODAY, WateredDepths.NONE,
				(roots, given) -> Optional.of(view(depletion)), null)
			.amount(computes, planting("oak", null, size, null), window)
			.map(Amount::words)
			.orElse("");
	}

	@Test
	void whatComesSoonGoesByTheBalanceAndTheRestByWhatIsUsual() {
		PlantingSize bed = new PlantingSize(10.0, null, null);
		assertThat(water(Computes.REFILL, bed, NOW, 41)).startsWith("About 400 litres").contains("40 minutes");
		assertThat(water(Computes.REFILL, bed, NOW, 1)).startsWith("Nothing now");
		assertThat(water(Computes.REFILL, bed, LATER, 1)).as("0.6 m of loam at 155 mm/m, half of it")
			.startsWith("About 470 litres");
	}

	@Test
	void treesGoByTheirTrunksAndPotsByTheirVolume() {
		PlantingSize trunk = new PlantingSize(null, 50.8, null);
		PlantingSize pot = new PlantingSize(null, null, 10.0);
		assertThat(water(Computes.YOUNG_TREE, trunk, NOW, 0)).contains("7.6 to 11 litres (2 to 3 gal)")
			.contains("every two to three days");
		assertThat(water(Computes.YOUNG_TREE, trunk, LATER, 0)).contains("once a week");
		assertThat(water(Computes.TREE, trunk, NOW, 0)).contains("(20 to 30 gal)");
		assertThat(water(Computes.YOUNG_TREE, pot, NOW, 0)).contains("2.5 to 3.3 litres");
		assertThat(water(Computes.POT, pot, NOW, 0)).contains("for each pot");
		assertThat(water(Computes.FLUSH_POT, pot, NOW, 0)).startsWith("20 litres");
		assertThat(water(Computes.LEACHING, new PlantingSize(10.0, null, null), NOW, 0)).contains("3,000 litres");
	}

	@ParameterizedTest
	@CsvSource({ "YOUNG_TREE", "TREE", "POT", "FLUSH_POT" })
	void withoutASizeTheWordsOfTheRuleStand(Computes computes) {
		assertThat(water(computes, PlantingSize.UNKNOWN, NOW, 20)).isEmpty();
	}

	@Test
	void aBedThatWasWateredByItselfTakesLess() {
		Subject watered = planting("oak", null, new PlantingSize(10.0, null, null), null);
		Subject other = planting("oak", null, new PlantingSize(10.0, null, null), null);
		WateredDepths depths = new WateredDepths(Map.of(TODAY.minusDays(2), 5.0),
				Map.of(new PlantingId(watered.id()), Map.of(TODAY.minusDays(2), 20.0)));
		PlantWater water = new PlantWater(SiteBeds.none(site(42, Sun.FULL_SUN, null)), TODAY, depths,
				(roots, given) -> Optional.of(view(40 - given.get(TODAY.minusDays(2)))), null);
		assertThat(water.amount(Computes.REFILL, watered, NOW).orElseThrow().words()).startsWith("About 150 litres");
		assertThat(water.amount(Computes.REFILL, other, NOW).orElseThrow().words()).startsWith("About 350 litres");
	}

	@Test
	void anAmountThatHardlyChangesStaysTheSame() {
		PlantingSize bed = new PlantingSize(10.0, null, null);
		assertThat(water(Computes.REFILL, bed, NOW, 23)).isEqualTo(water(Computes.REFILL, bed, NOW, 27));
	}

	/** Common practice: plants of the forest floor never go into full sun. */
	@Test
	void aHouseplantGoesNoFurtherThanTheLightItLikes() {
		RampLight out = new RampLight(RampLight.Way.OUT, TemperatureThreshold.parse("55F"), Map.of());
		PlantLight sunny = new PlantLight(site(42, Sun.FULL_SUN, null));
		double shade = last(sunny, out,
				planting("houseplant", Light.SHADE, PlantingSize.UNKNOWN, RaisedIn.MORNING_WINDOW));
		double sun = last(sunny, out,
				planting("citrus", Light.FULL_SUN, PlantingSize.UNKNOWN, RaisedIn.MORNING_WINDOW));
		assertThat(shade).isLessThan(sun / 3);
		assertThat(last(new PlantLight(site(42, Sun.SHADE, null)), out,
				planting("citrus", Light.FULL_SUN, PlantingSize.UNKNOWN, RaisedIn.MORNING_WINDOW)))
			.as("nor than the site has")
			.isLessThan(sun / 3);
	}

	private static double last(PlantLight light, RampLight way, Subject subject) {
		List<org.leafward.amounts.light.RampDay> days = light.ramp(way, subject, LocalDate.of(2027, 6, 1), 14)
			.orElseThrow()
			.days();
		return days.get(days.size() - 1).targetMoles();
	}

	/** The window to the midday sun is south in the north and north in the south. */
	@Test
	void theWindowToTheMiddaySunChangesSidesWithTheHemisphere() {
		RampLight out = new RampLight(RampLight.Way.OUT, TemperatureThreshold.parse("50F"), Map.of());
		Subject seedlings = planting("transplant", Light.FULL_SUN, PlantingSize.UNKNOWN, RaisedIn.MIDDAY_WINDOW);
		assertThat(new PlantLight(site(42, Sun.FULL_SUN, null)).ramp(out, seedlings, TODAY, 14)
			.orElseThrow()
			.basis()
			.start()
			.words()).contains("south");
		assertThat(new PlantLight(site(-42, Sun.FULL_SUN, null)).ramp(out, seedlings, TODAY, 14)
			.orElseThrow()
			.basis()
			.start()
			.words()).contains("north");
	}

	@Test
	void clothThinsOutAndTheWayInGetsDarker() {
		PlantLight light = new PlantLight(site(42, Sun.PART_SHADE, null));
		Subject fern = planting("perennial", Light.SHADE, PlantingSize.UNKNOWN, null);
		List<Amount> cloth = light.steps(new RampLight(RampLight.Way.CLOTH, null, Map.of()), fern, TODAY, 21);
		assertThat(cloth).hasSize(21);
		assertThat(cloth.get(0).words()).contains("Shade cloth of 80 %");
		assertThat(cloth.get(20).words()).contains("The cloth comes off");
		List<Amount> in = light.steps(new RampLight(RampLight.Way.IN, null, Map.of()),
				planting("houseplant", Light.PART_SHADE, PlantingSize.UNKNOWN, RaisedIn.MORNING_WINDOW), TODAY, 7);
		assertThat(in).hasSize(7);
		assertThat(in.get(6).words()).contains("indoors by day");
	}

	/**
	 * National Weather Service Blacksburg: plants are colder than the shelter at night.
	 */
	@Test
	void aCoverGoesByTheForecastAtTheSiteAndTheTemperatureThatHurts() {
		Hurt hurt = new Hurt(TemperatureThreshold.parse("33F"), Map.of());
		Subject tomato = planting("vegetable", null, PlantingSize.UNKNOWN, null);
		assertThat(cover(2.5, hurt, tomato)).startsWith("Cover with");
		assertThat(cover(8, hurt, tomato)).startsWith("No cover needed");
		assertThat(cover(-6, hurt, tomato)).contains("bring it indoors or harvest");
		assertThat(cover(2.5, Hurt.UNKNOWN, tomato)).isEmpty();
		assertThat(new PlantCover((day) -> OptionalDouble.empty()).amount(hurt, tomato, NOW)).isEmpty();
	}

	private static String cover(double lowest, Hurt hurt, Subject subject) {
		return new PlantCover(
				(day) -> day.equals(NOW.to().plusDays(1)) ? OptionalDouble.of(lowest) : OptionalDouble.empty())
			.amount(hurt, subject, NOW)
			.map(Amount::words)
			.orElse("");
	}

}
